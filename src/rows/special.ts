import type { Diagnostic, Span } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import { everySize } from './count.ts'
import { partsOf } from './phrase/parts.ts'
import { readSteps } from './read.ts'
import type { Vocabulary } from './reader.ts'
import type { Part, Special, Step } from './step.ts'
import type { Dictionary } from './terms/dictionary.ts'
import { plain } from './terms/stitch.ts'
import { readWords } from './words.ts'
import type { Passage, Section } from './written.ts'

/** Headings under which stitches are defined or abbreviations are listed. */
export function definesStitches(title: string | null): boolean {
  return (
    title !== null && /special stitch|stitch guide|stitches used|pattern stitches|abbreviation|stitch key/i.test(title)
  )
}

function double(count: number, sizes: number): Part {
  return { kind: 'stitch', stitch: plain('doubleCrochet'), count: everySize(count, sizes) }
}

/** Meanings of well-known names where a pattern gives none: common practice, no source. */
function wellKnown(sizes: number): readonly Special[] {
  const chain: Part = { kind: 'chain', count: everySize(1, sizes) }
  const known = (name: string, also: readonly string[], makes: Special['makes'], meaning: string): Special => ({
    name,
    also,
    makes,
    meaning,
    at: null,
  })
  return [
    known('shell', ['sh'], [double(5, sizes)], '5 double crochet in one place'),
    known(
      'V-st',
      ['v-stitch', 'v st', 'vst'],
      [double(1, sizes), chain, double(1, sizes)],
      'two double crochet with ch 1 between',
    ),
    known('cluster', ['cl'], 'one stitch', 'several stitches closed as one'),
    known('bobble', ['bo'], 'one stitch', 'several stitches in one place closed as one'),
    known('puff', ['puff st', 'puff stitch'], 'one stitch', 'loops drawn up in one place and closed as one'),
    known('popcorn', ['pc', 'popcorn stitch', 'pop'], 'one stitch', 'several stitches in one place drawn together'),
    known('picot', [], [{ kind: 'picot' }], 'chains closed to a small loop'),
  ]
}

function spellings(special: Pick<Special, 'name' | 'also'>): readonly string[] {
  const names = [special.name, ...special.also].map((name) => name.toLowerCase())
  return names.flatMap((name) => [name, name.endsWith('ch') ? `${name}es` : `${name}s`])
}

function enterSpecial(specials: Map<string, Special>, special: Special): void {
  for (const spelling of spellings(special)) specials.set(spelling, special)
}

export function wellKnownSpecials(sizes: number): Map<string, Special> {
  const specials = new Map<string, Special>()
  for (const special of wellKnown(sizes)) enterSpecial(specials, special)
  return specials
}

const definitionLine = /^[\s>*_-]*([^:=\n]{1,60}?)[*_\s]*(?::|=|\s[–—-]\s)[*_]*\s*(\S.*)$/s

interface Definition {
  readonly name: string
  readonly also: readonly string[]
  readonly meaning: string
  readonly at: Span
  readonly meaningAt: Span
}

/** `**Shell (sh):** 5 dc in same st.` */
function definitionOf(line: string, start: number): Definition | null {
  const match = definitionLine.exec(line)
  const head = match?.[1]
  const meaning = match?.[2]
  if (match === null || head === undefined || meaning === undefined) return null
  const names = /^(.*?)\s*[([](.+?)[)\]]\s*$/.exec(head)
  const name = (names?.[1] ?? head).replace(/[*_]+/g, '').trim()
  const also = names?.[2] === undefined ? [] : names[2].split(/,|\bor\b/).map((each) => each.trim())
  if (name === '') return null
  const meaningStart = start + line.lastIndexOf(meaning)
  const lead = line.length - line.trimStart().length
  return {
    name: asWritten(name),
    also,
    meaning: meaning.trim(),
    at: { start: start + lead, end: start + line.trimEnd().length },
    meaningAt: { start: meaningStart, end: meaningStart + meaning.trimEnd().length },
  }
}

/** `Shell` → `shell`; `V-st` and `FPdc` stay. */
function asWritten(name: string): string {
  const second = name.charAt(1)
  return second !== '' && second === second.toLowerCase() && /\p{L}/u.test(second)
    ? name.charAt(0).toLowerCase() + name.slice(1)
    : name
}

/** A definition is read before any row can tell between two readings. */
function likelier(step: Step): readonly Step[] {
  return step.kind === 'either' ? (step.options[0] ?? []) : [step]
}

function makesOf(steps: readonly Step[]): Special['makes'] {
  const working = steps.filter((step) => step.kind !== 'remark').flatMap(likelier)
  const [only, ...others] = working
  // `sc2tog` by itself goes over two stitches.
  if (only?.kind === 'together' && others.length === 0) return { steps: working }
  if (only?.kind === 'work' && others.length === 0) {
    const { where } = only
    const single = where.kind === 'same' || where.kind === 'next' || where.kind === 'ring' || where.kind === 'first'
    if (single) return partsOf([{ ...only, where: { kind: 'same', start: false } }]) ?? { steps: working }
  }
  return partsOf(working) ?? { steps: working }
}

function isAbbreviation(definition: Definition, dictionary: Dictionary, steps: readonly Step[] | null): boolean {
  if (dictionary.stitches.has(definition.name.toLowerCase())) return true
  return steps === null && definition.also.length === 0
}

/** The special stitch that a line defines. */
function special(definition: Definition, passage: Passage, vocabulary: Vocabulary): Special | 'unread' | null {
  const { name, also, meaning, at, meaningAt } = definition
  const text = passage.text.slice(meaningAt.start - passage.at.start, meaningAt.end - passage.at.start)
  const words = readWords({ at: meaningAt, text, holes: passage.holes }, vocabulary.sizes)
  const { steps } = readSteps(words, vocabulary, null)
  if (/counts? as (?:1|one|a|a single) (?:st|stitch)\b/i.test(meaning))
    return { name, also, makes: 'one stitch', at, meaning }
  if (isAbbreviation(definition, vocabulary.dictionary, steps)) {
    const known = vocabulary.specials.get(name.toLowerCase())
    if (known !== undefined && steps === null) return { ...known, name, at, meaning }
    return steps === null && !/abbreviation/i.test(name) ? 'unread' : null
  }
  if (steps === null || steps.every((step) => step.kind === 'remark')) return 'unread'
  return { name, also, makes: makesOf(steps), at, meaning }
}

/** A line of another kind under such a heading: `sc – single crochet`, `st(s): stitch(es)`. */
function isPlainAbbreviation(definition: Definition, title: string | null): boolean {
  if (title === null || !/abbreviation/i.test(title)) return false
  return (
    /^[\p{L} -]*(?:\([\p{L}]+\))?$/u.test(definition.meaning.replace(/[.;,]/g, '')) && !/\d/.test(definition.meaning)
  )
}

function lines(passage: Passage): readonly { text: string; start: number }[] {
  const found: { text: string; start: number }[] = []
  let start = passage.at.start
  for (const text of passage.text.split('\n')) {
    found.push({ text, start })
    start += text.length + 1
  }
  return found
}

/**
 * A definition that could not be read. A name that the trade knows keeps its common meaning.
 *
 * @returns that meaning; null where the name has none
 */
function enterUnread(
  definition: Definition,
  specials: Map<string, Special>,
  unread: Map<string, string>,
): string | null {
  const { name, also, at, meaning } = definition
  const known = specials.get(name.toLowerCase())
  if (known !== undefined) {
    enterSpecial(specials, { ...known, name, also, at, meaning })
    return known.meaning
  }
  for (const spelling of spellings({ name, also })) unread.set(spelling, name)
  return null
}

/**
 * Reads the definitions of a section and enters them, so that later ones can use earlier ones.
 *
 *     - **Shell (sh):** 5 dc in same st.
 */
export function readDefinitions(
  section: Section,
  vocabulary: Vocabulary,
  specials: Map<string, Special>,
  unread: Map<string, string>,
): readonly Diagnostic[] {
  const found: Diagnostic[] = []
  for (const passage of section.passages) {
    for (const line of lines(passage)) {
      const definition = definitionOf(line.text, line.start)
      if (definition === null || isPlainAbbreviation(definition, section.title)) continue
      const read = special(definition, passage, vocabulary)
      if (read === 'unread') {
        if (/abbreviation/i.test(section.title ?? '')) continue
        const { name, at } = definition
        found.push(diagnose('special-unread', at, { name, meaning: enterUnread(definition, specials, unread) }))
      } else if (read !== null) enterSpecial(specials, read)
    }
  }
  return found
}
