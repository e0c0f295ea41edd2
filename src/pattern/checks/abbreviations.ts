import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Dictionary } from '../../rows/index.ts'
import { dictionaryFor } from '../../rows/index.ts'
import type { Ledger } from '../../rows/ledger.ts'
import { type Draft, textAt } from '../draft.ts'
import type { Listed } from './abbreviation-list.ts'
import { abbreviationSections, listedAbbreviations } from './abbreviation-list.ts'

/** Words that stand in every pattern; lists often leave them out (common practice, no source). */
const understood = new Set(['st(s)', 'rnd(s)', 'rep', 'RS', 'WS', 'sp(s)', 'lp(s)'])

/** `sl st (ss)`, `ch(s)`, `st/sts`: every spelling that a line of the list stands for, in lower case. */
function spellings({ written }: Listed): readonly string[] {
  const plural = written.replace(/\((e?s)\)/g, '')
  return plural
    .toLowerCase()
    .split(/[(),/]/)
    .map((each) => each.replace(/\s+/g, ' ').trim())
    .filter((each) => each !== '')
}

/** Whether a text holds an abbreviation as a word, in one number or the other, `3dc` too. */
function holds(text: string, abbreviation: string): boolean {
  const escaped = abbreviation.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/ /g, '\\s*')
  return new RegExp(`(?<!\\p{L})${escaped}(?:s|es)?(?![\\p{L}\\d])`, 'iu').test(text)
}

/** `FPdc` is covered by `FP` and `dc`, `sc2tog` by `tog`. */
function isCovered(abbreviation: string, listed: ReadonlySet<string>): boolean {
  const plain = abbreviation.toLowerCase().replace(/\(e?s\)/g, '')
  if (listed.has(plain) || listed.has(plain.replaceAll(' ', ''))) return true
  if (/\d+tog$/.test(plain))
    return listed.has('tog') || listed.has('dec') || [...listed].some((each) => /tog$/.test(each))
  const post = /^(fp|bp)(\S+)$/.exec(plain)
  return post !== null && listed.has(post[1] ?? '') && listed.has(post[2] ?? '')
}

function* unlisted(draft: Draft, ledger: Ledger, listed: readonly Listed[]): Generator<Diagnostic> {
  const known = new Set(listed.flatMap(spellings))
  for (const { abbreviation, meaning, special, at } of ledger.terms) {
    if (special || understood.has(abbreviation) || isCovered(abbreviation, known)) continue
    const row = ledger.written.find((each) => each.at.start <= at.start && at.start < each.at.end)
    const short = abbreviation.replace(/\(e?s\)/g, '')
    // Written in full it needs no list.
    if (row === undefined || !holds(textAt(draft, row.at), short)) continue
    yield diagnose('abbreviation-unlisted', at, { abbreviation: short, meaning })
  }
}

/** The body without the list itself. */
function elsewhere(draft: Draft): string {
  const parts: string[] = []
  let from = draft.bodyStart
  for (const { start, end } of abbreviationSections(draft)) {
    parts.push(draft.source.text.slice(from, start))
    from = end
  }
  return [...parts, draft.source.text.slice(from)].join('\n')
}

/** Formulas that print steps, and the words that they print. */
const shaping = /\b(?:evenly|spaced|taper|waist_taper|armhole_steps|neck_steps|shoulder_steps|yoke_rounds)\(/
const shapingWords = 'inc increase dec decrease st sts rnds'

/** `ch-sp` stands for `ch-2 sp` as well. */
function isUsed(name: string, text: string): boolean {
  const space = /^ch[- ]?(?:sps?|spaces?)$/.test(name)
  return space ? /\bch[- ]?\d*[- ]?sps?\b/i.test(text) : holds(text, name)
}

function* unused(draft: Draft, listed: readonly Listed[]): Generator<Diagnostic> {
  const body = elsewhere(draft)
  const text = shaping.test(body) ? `${body} ${shapingWords}` : body
  for (const each of listed) {
    const names = [...spellings(each), each.meaning.toLowerCase()]
    if (!names.some((name) => isUsed(name, text)))
      yield diagnose('abbreviation-unused', each.at, { abbreviation: each.written })
  }
}

function meaningOf({ meaning }: Listed): string {
  return meaning
    .toLowerCase()
    .replace(/[.;,]+$/, '')
    .trim()
}

/** A line of the list whose abbreviation or meaning only the other country uses, or which makes another stitch of it. */
function* wronglyListed(listed: readonly Listed[], dictionary: Dictionary): Generator<Diagnostic> {
  const { terms, foreign } = dictionary
  for (const each of listed) {
    const names = [...spellings(each), meaningOf(each)]
    const name = names.find((word) => foreign.has(word))
    const other = terms === 'us' ? 'UK' : 'US'
    if (name === undefined) yield* otherStitch(each, dictionary)
    else yield diagnose('abbreviation-of-other-terms', each.at, { name, other, own: foreign.get(name) ?? '' })
  }
}

/** `tr: double crochet` */
function* otherStitch(each: Listed, { stitches, byBase, terms }: Dictionary): Generator<Diagnostic> {
  const meaning = meaningOf(each)
  const meant = stitches.get(meaning)
  const own = stitches.get(spellings(each)[0] ?? '')
  if (meant === undefined || own === undefined || meant.base === own.base) return
  const name = byBase.get(own.base)?.name ?? ''
  yield diagnose('abbreviation-means-other', each.at, {
    abbreviation: each.written,
    meaning,
    name,
    terms: terms === 'us' ? 'US' : 'UK',
  })
}

/** The draft's own list of abbreviations against its rows; nothing where it brings no list, for the page then makes one. */
export function* abbreviationFindings(draft: Draft, ledger: Ledger): Generator<Diagnostic> {
  const listed = listedAbbreviations(draft)
  if (listed.length === 0) return
  yield* unlisted(draft, ledger, listed)
  yield* unused(draft, listed)
  yield* wronglyListed(listed, dictionaryFor(draft.facts.facts.terms))
}
