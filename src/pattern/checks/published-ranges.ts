import { toString as plainText } from 'mdast-util-to-string'
import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Environment } from '../../formula/index.ts'
import { isWithin, type PublishedYarn, publishedYarn, yarnCategoryNumber } from '../../grading/index.ts'
import { readQuantity } from '../../measure/index.ts'
import type { Ledger } from '../../rows/ledger.ts'
import { bodyNodes, type Draft } from '../draft.ts'
import type { Facts } from '../facts.ts'

/** Yarns that are worked together are thicker than each of them. */
const together =
  /\b(?:held (?:double|together|doubled|triple)|(?:double|two|2|3|three) strands?|strands? (?:held|together))\b/i

/** What is worked firm on purpose, with a smaller hook: by its name, or by what fills it. */
const firm = /\b(?:toys?|amigurumi|dolls?|softies|baskets?|stuffing|fib(?:er|re)[- ]?fill|toy filling)\b/i

/*
 * Hands differ by two hook sizes, and the trade works worsted with 5 mm, DK with 4 mm and lace with more: beyond the
 * published range a tenth is allowed, and of hooks a quarter, at most a millimetre (common practice, no source).
 */
const allowedStitches = (end: number): number => end / 10
const allowedMillimetres = (end: number): number => Math.min(1, end / 4)

interface Category {
  readonly number: number
  readonly published: PublishedYarn
}

/** The categories of all yarns; null where one of them is not known, or they are worked together. */
function categoriesOf(draft: Draft): readonly Category[] | null {
  const found = draft.facts.facts.yarn.map(({ category }): Category | null => {
    const number = typeof category === 'string' ? yarnCategoryNumber(category) : (category ?? null)
    const published = number === null ? null : publishedYarn(number)
    return number === null || published === null ? null : { number, published }
  })
  const known = found.filter((each) => each !== null)
  if (known.length === 0 || known.length < found.length) return null
  const { swatch } = draft.facts.facts
  const said = [
    ...Object.values(swatch).map((each) => each.in ?? ''),
    ...bodyNodes(draft).map((node) => plainText(node)),
  ]
  return said.some((words) => together.test(words)) ? null : known
}

function nameOf({ number, published }: Category): string {
  return `${published.name} (category ${number})`
}

/** Gauge and hooks that are outside of what is published for every category of the draft's yarns. */
export function* rangeFindings(draft: Draft, environment: Environment, ledger: Ledger): Generator<Diagnostic> {
  const categories = categoriesOf(draft)
  const [first] = categories ?? []
  if (categories === null || first === undefined) return
  const { hooks, kind, title, notions } = draft.facts.facts
  if ([title, ...kind, ...notions].some((words) => firm.test(words))) return
  yield* gaugeFinding(draft, environment, ledger, categories)
  const sizes = hooks.flatMap((text) => millimetresIn(text) ?? [])
  if (sizes.length === 0 || sizes.length < hooks.length) return
  const fits = sizes.some((mm) =>
    categories.some(({ published }) => isWithin(published.hookMm, mm, allowedMillimetres)),
  )
  if (fits) return
  const details = { hook: `${sizes[0]} mm`, category: nameOf(first), range: first.published.hookMm }
  yield diagnose('hook-outside-category', draft.facts.locate('hooks', 0), details)
}

function millimetresIn(text: string): number | null {
  const found = /\d+(?:[.,]\d+)?\s?mm\b/.exec(text)?.[0].replace(',', '.')
  return found === undefined ? null : (readQuantity(found)?.amount.valueOf() ?? null)
}

function* gaugeFinding(
  draft: Draft,
  environment: Environment,
  ledger: Ledger,
  categories: readonly Category[],
): Generator<Diagnostic> {
  const found = environment.gauge(null)
  const perCentimetre = found.kind === 'found' ? found.gauge.stitches : null
  const swatch = Object.entries(draft.facts.facts.swatch)[0]
  if (found.kind !== 'found' || perCentimetre === null || swatch === undefined) return
  const metric = found.gauge.unit === 'cm'
  const exact = perCentimetre.mul(metric ? '10' : '10.16').valueOf()
  const [name, { in: worked }] = swatch
  const stitch = stitchOf(worked, draft.facts.facts, ledger)
  const alike = categories.filter(({ published }) => published.stitch === stitch)
  const [first] = alike
  if (first === undefined || alike.length < categories.length) return
  if (alike.some(({ published }) => isWithin(published.gauge, Math.round(exact), allowedStitches))) return
  const at = draft.facts.locate(...(name === '' ? ['swatch', 'stitches'] : ['swatch', name, 'stitches']))
  yield diagnose('gauge-outside-category', at, {
    gauge: String(Math.round(exact * 10) / 10),
    over: metric ? '10 cm' : '4 in',
    stitch: plainStitches[draft.facts.facts.terms][first.published.stitch][0],
    category: nameOf(first),
    range: first.published.gauge,
  })
}

type Plain = PublishedYarn['stitch']

/** The plain stitches that gauges are published in, by the words of each terms. */
const plainStitches = {
  us: { sc: ['single crochet', 'sc'], dc: ['double crochet', 'dc'] },
  uk: { sc: ['double crochet', 'dc'], dc: ['treble crochet', 'treble', 'tr'] },
} as const

/** `single crochet in rounds` is a swatch of the stitch, `shells in single crochet` is none. */
function isPlain(worked: string, names: readonly string[]): boolean {
  const tail = `(?: (?:fabric|rows|stitch(?:es)?|in (?:the )?(?:rounds?|rnds?|rows)))?`
  return new RegExp(`^(?:(?:plain|even) )?(?:${names.join('|')})${tail}$`, 'i').test(worked.trim())
}

/** The plain stitch of the swatch; where it does not say, that of rows which are all worked in it. Null for any other. */
function stitchOf(worked: string | undefined, { terms }: Facts, { rows }: Ledger): Plain | null {
  const kinds = new Set(rows.flatMap(({ counts }) => Object.keys(counts)))
  const isOf = (stitch: Plain): boolean => {
    const names = plainStitches[terms][stitch]
    if (worked !== undefined) return isPlain(worked, names)
    const own = names.find((name) => kinds.has(name))
    return own !== undefined && [...kinds].every((kind) => kind === own || kind === 'ch')
  }
  return (['sc', 'dc'] as const).find(isOf) ?? null
}
