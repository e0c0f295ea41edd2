import { z } from 'zod'

/**
 * The facts of a draft, as its front matter must state them. Text that holds a formula or a measure
 * stays text here; later phases read it with its place in the file.
 */

const words = z.string().trim().min(1, 'needs some text')
/** YAML reads `edition: 1.1` or a size `4` as a number; a designer means the text. */
const wordsOrNumber = z.union([words, z.number()]).transform(String)
const date = z
  .string()
  .refine(
    (value) => /^\d{4}-\d{2}-\d{2}$/.test(value) && !Number.isNaN(Date.parse(value)),
    'needs a date such as 2026-03-14',
  )

/** One measurement or several of the same thing. */
const measured = z.union(
  [
    wordsOrNumber,
    z.array(wordsOrNumber).min(1, 'needs at least one measurement').max(40, 'holds more than 40 measurements'),
  ],
  {
    error: 'needs a measurement such as 12 per 10 cm, or a list of them',
  },
)
const each = z.int('needs a whole number').positive('needs a whole number above 0')

const repeat = z
  .strictObject({
    stitches: each.optional(),
    width: measured.optional(),
    rows: each.optional(),
    height: measured.optional(),
  })
  .refine(({ width, height }) => width !== undefined || height !== undefined, 'needs a width or a height')

const unblocked = z.strictObject({ stitches: measured.optional(), rows: measured.optional() })

const swatch = z.strictObject({
  stitches: measured.optional(),
  rows: measured.optional(),
  /** The same before blocking. */
  unblocked: unblocked.optional(),
  /** Stitch multiples with measures of their own. */
  repeats: z.record(z.string(), repeat).optional(),
  hook: wordsOrNumber.optional(),
  /** The stitch or stitch pattern that it is worked in. */
  in: words.optional(),
  size: words.optional(),
  weight: wordsOrNumber.optional(),
})

const yarn = z.strictObject({
  as: words.default('main'),
  category: z.union([z.number().int().min(0).max(7), words]).optional(),
  fibre: words.optional(),
  skein: z.strictObject({ weight: words.optional(), length: words.optional() }).optional(),
  /** Pieces that are worked in it, by their headings, and rows of pieces: `{Cowl: Rnds 1-4}`. */
  pieces: z.array(words, { error: 'needs a list of headings, such as [Edging]' }).optional(),
  rows: z.record(z.string(), wordsOrNumber).optional(),
})

/** A formula, in words or as YAML reads it: a number, a list with one for each size. */
const amount = z.union([wordsOrNumber, z.array(wordsOrNumber)])
const carried = z.strictObject({
  length: amount.optional(),
  across: amount.optional(),
  strands: amount.optional(),
  stitches: amount.optional(),
  wraps: amount.optional(),
  weight: amount.optional(),
  count: amount.optional(),
  worked: z.enum(['chain', 'slip stitch', 'twisted']).optional(),
  yarn: words.optional(),
})
const carriedKeys = Object.keys(carried.shape)
const finish = z.union([words, z.record(z.string(), carried)], {
  error: `needs a word such as fringe, or one with its amounts, {fringe: {length: 15 cm, strands: 40}}, out of ${carriedKeys.join(', ')}`,
})

const percentage = z
  .union([z.number(), words], { error: 'needs a percentage such as 10 %' })
  .transform((written) => Number(/^(\d{1,3}(?:\.\d+)?) ?%$/.exec(String(written))?.[1] ?? written))
  .refine((share) => share === 0 || (share >= 1 && share <= 100), 'needs a percentage such as 10 %, from 0 to 100')

/** A word or two, compared without capitals. */
const kind = words
  .max(40, 'is too long for the name of a kind')
  .transform((text) => text.toLowerCase().replace(/\s+/g, ' '))
const kinds = z
  .union([kind.transform((single) => [single]), z.array(kind)], {
    error: 'needs a word such as hat, or a list of them',
  })
  .default([])

const change = z.strictObject({ edition: wordsOrNumber, date: date.optional(), note: words })
const acceptance = z.strictObject({ code: words, at: wordsOrNumber, why: words })
const claim = z.strictObject({ claims: words, over: words })
/** How far a reader may change a length, or how far their gauge may be from the swatch's. */
const allowance = z.union(
  [z.strictObject({ from: words, to: words, label: words.optional() }), z.strictObject({ within: percentage })],
  { error: 'needs how far a reader may go, such as {from: 16 cm, to: 36 cm}, or {within: 15 %} for a gauge' },
)

const facts = z.strictObject({
  title: words,
  summary: words.optional(),
  published: date.optional(),
  edition: wordsOrNumber.optional(),
  changes: z.array(change).default([]),
  kind: kinds,
  skill: z.enum(['basic', 'easy', 'intermediate', 'complex']).optional(),
  terms: z.enum(['us', 'uk']).default('us'),
  sizes: z.array(wordsOrNumber).min(1, 'needs at least one size').max(24, 'holds more sizes than a page can show (24)'),
  fits: z.strictObject({ table: words, sizes: z.array(wordsOrNumber).optional() }).optional(),
  swatch: z.record(z.string(), swatch).default({}),
  yarn: z.array(yarn).default([]),
  hooks: z.array(wordsOrNumber).default([]),
  notions: z.array(words).default([]),
  sample: z.array(z.strictObject({ size: wordsOrNumber, used: z.record(z.string(), words) })).default([]),
  /** Per cent of yarn to spare; a tenth where nothing is said (common practice, no source): ends, a looser hand, the swatch itself. */
  margin: percentage.default(10),
  finished: z.record(z.string(), z.union([wordsOrNumber, claim])).default({}),
  /** How far a finished measure may be off what it was to be: a length or a percentage, as a formula. */
  tolerance: amount.optional(),
  /** Per cent that a closed edge stretches over a head; a fifth where nothing is said (common practice, no source). */
  stretch: percentage.default(20),
  reader: z.record(z.string(), allowance).default({}),
  cover: z.strictObject({ src: words, alt: words }).optional(),
  video: z.strictObject({ url: words, at: z.record(z.string(), wordsOrNumber).default({}) }).optional(),
  accepted: z.array(acceptance).default([]),
  finish: z.array(finish).default([]),
})

/** The facts of a draft, checked. A single swatch is the map with the one name `''`. */
export type Facts = z.infer<typeof facts>
export type SwatchFacts = z.infer<typeof swatch>
export type RepeatFacts = z.infer<typeof repeat>
export type YarnFacts = z.infer<typeof yarn>
export type AllowanceFacts = z.infer<typeof allowance>
export type FinishFacts = z.infer<typeof carried>
export type FactsIssue = z.core.$ZodIssue

/** Checks what the front matter says; the issues' paths are those of `raw`. */
export function checkFacts(raw: unknown): { facts: Facts | null; issues: readonly FactsIssue[] } {
  const single = hasSingleSwatch(raw)
  const named = single ? { ...raw, swatch: { '': raw.swatch } } : raw
  const sampled = hasSingleSample(named)
  const result = facts.safeParse(sampled ? { ...named, sample: [named.sample] } : named)
  if (result.success) return { facts: result.data, issues: [] }
  const issues = single ? result.error.issues.map(withoutSwatchName) : result.error.issues
  return { facts: null, issues: sampled ? issues.map(withoutSampleNumber) : issues }
}

/** Most drafts have one weighed sample, and give it without the brackets of a list. */
function hasSingleSample(raw: unknown): raw is { sample: object } {
  return typeof raw === 'object' && raw !== null && 'sample' in raw && !Array.isArray(raw.sample)
}

function withoutSampleNumber(issue: FactsIssue): FactsIssue {
  const [first, , ...rest] = issue.path
  return first === 'sample' ? { ...issue, path: [first, ...rest] } : issue
}

const swatchKeys: ReadonlySet<string> = new Set(Object.keys(swatch.shape))

/** `swatch:` is one swatch when it has a swatch's own keys, else a map of named ones. */
function hasSingleSwatch(raw: unknown): raw is { swatch: unknown } {
  if (typeof raw !== 'object' || raw === null || !('swatch' in raw)) return false
  const written = raw.swatch
  if (typeof written !== 'object' || written === null) return true
  const entries = Object.entries(written)
  return entries.some(([key, value]) => isOwnLine(key, value) || typeof value !== 'object')
}

/** A swatch may be called `unblocked` or `repeats` too, and then holds the lines of a swatch. */
function isOwnLine(key: string, value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return swatchKeys.has(key)
  if (key === 'repeats') return Object.values(value).every((lines) => typeof lines === 'object')
  return swatchKeys.has(key) && key !== 'unblocked'
}

function withoutSwatchName(issue: FactsIssue): FactsIssue {
  const [first, , ...rest] = issue.path
  return first === 'swatch' ? { ...issue, path: [first, ...rest] } : issue
}

function swatchKeysAt(path: readonly PropertyKey[]): readonly string[] {
  if (path.includes('repeats')) return Object.keys(repeat.shape)
  return path.includes('unblocked') ? Object.keys(unblocked.shape) : [...swatchKeys]
}

/** Keys that a mapping of the front matter may have, by the mapping's path; for offering the nearest one. */
export function knownKeys(path: readonly PropertyKey[]): readonly string[] {
  const [first] = path
  if (first === undefined) return Object.keys(facts.shape)
  if (first === 'swatch') return swatchKeysAt(path)
  if (first === 'yarn') return Object.keys(path.includes('skein') ? { weight: 0, length: 0 } : yarn.shape)
  if (first === 'finish') return carriedKeys
  if (first === 'changes') return Object.keys(change.shape)
  if (first === 'accepted') return Object.keys(acceptance.shape)
  if (first === 'finished') return Object.keys(claim.shape)
  return (
    {
      fits: ['table', 'sizes'],
      sample: ['size', 'used'],
      reader: ['from', 'to', 'label', 'within'],
      cover: ['src', 'alt'],
      video: ['url', 'at'],
    }[String(first)] ?? []
  )
}
