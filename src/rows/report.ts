import type { Diagnostic, Span } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { ReadRow } from './cut.ts'
import type { EntryWork } from './entry-row.ts'
import { labelFor } from './entry-row.ts'
import type { Wording } from './findings.ts'
import { isEndless, leavesFindings, leftFindings, rowName, stopFindings } from './findings.ts'
import { longestRange } from './label.ts'
import type { Mismatch } from './mismatch.ts'
import { mismatchCause, mismatchFinding, mismatchOf, uncheckedFinding } from './mismatch.ts'
import { misspelt } from './nearest.ts'
import type { Piece } from './piece.ts'
import type { Plan } from './plan.ts'
import type { Special } from './step.ts'
import type { Dictionary } from './terms/dictionary.ts'

/** The names of special stitches, in lower case. */
export interface Names {
  readonly known: ReadonlyMap<string, Special>
  /** Those whose definition could not be read, with the name that has been told. */
  readonly unread: ReadonlyMap<string, string>
}

/** What a report needs beside the row itself. */
export interface Reporting {
  readonly sizes: readonly string[]
  readonly dictionary: Dictionary
  /** The draft's own words at a place. */
  readonly words: (at: Span) => string
  readonly names: Names
}

function mismatches(work: EntryWork): readonly Mismatch[] {
  const { row, worked, checked, dictionary } = work
  const { stated } = row
  if (stated === null) return []
  const found: Mismatch[] = []
  worked.forEach((result, size) => {
    // A repeat that does not come out is told as such, once.
    if (result === null || result.stop !== null || !checked(size) || isEndless(result)) return
    const miss = mismatchOf(stated, result, size, dictionary)
    if (miss !== null) found.push(miss)
  })
  return found
}

function countFindings(work: EntryWork, misses: readonly Mismatch[], wording: Wording): readonly Diagnostic[] {
  const { row, worked, entry } = work
  if (row.stated === null) return []
  const { at } = row.stated
  const name = rowName(labelFor(row, entry.number))
  const finding =
    misses.length === 0
      ? null
      : mismatchFinding(misses, name, at, mismatchCause(misses, worked, wording), wording.names)
  return [finding, uncheckedFinding(work, row.stated, name)].filter((each) => each !== null)
}

/** Of a row that repeats another one the finding stands at its own words, and points to the repeated ones. */
function atOwnWords(finding: Diagnostic, row: ReadRow): Diagnostic {
  const { at } = finding
  const own = at === row.stated?.at || (row.at.start <= at.start && at.end <= row.at.end)
  if (own) return finding
  const related = [...finding.related, { at, note: 'The words that are repeated.' }]
  return { ...finding, at: row.steps, related }
}

/**
 * All that is wrong with an entry that has been worked.
 *
 * @param told whether what is wrong for a size follows from what has been told of an earlier row
 */
export function entryFindings(
  reporting: Reporting,
  work: EntryWork,
  told: (size: number) => boolean,
): readonly Diagnostic[] {
  const { row, entry } = work
  const name = rowName(labelFor(row, entry.number))
  const worked = work.worked.map((result, size) => (told(size) ? null : result))
  const misses = mismatches({ ...work, worked })
  const missing = new Set(misses.map((miss) => miss.size))
  const wording = { names: reporting.sizes, words: reporting.words, dictionary: reporting.dictionary, job: work.job }
  return [
    ...stopFindings(worked, name, wording),
    ...countFindings(work, misses, wording),
    ...leavesFindings(worked, name, row.steps),
    ...leftFindings(worked, name, row.steps, (size) => missing.has(size), wording),
  ].map((each) => atOwnWords(each, row))
}

/** The words that stopped the reader, as they stand in the draft. */
export function wordsUnread(reporting: Reporting, unread: ReadRow['unread']): string {
  return unread === null || unread.words === '' ? '' : reporting.words(unread.at) || unread.words
}

/** Why a row can't be read that uses a special stitch whose definition could not be: that has been told. */
export function specialUnread(reporting: Reporting, row: ReadRow): string | null {
  const words = row.unread?.words.split(' ') ?? []
  for (let from = 0; from < Math.min(words.length, 3); from += 1) {
    for (let end = words.length; end > from; end -= 1) {
      const name = reporting.names.unread.get(words.slice(from, end).join(' '))
      if (name !== undefined) return `The definition of ${name} could not be read.`
    }
  }
  return null
}

/** A word among those that could not be read which only the other terms have. */
function foreignFinding(
  { dictionary: { foreign, terms }, words: written }: Reporting,
  { at, words }: NonNullable<ReadRow['unread']>,
  row: string,
): Diagnostic | null {
  const word = words.split(' ').find((each) => foreign.has(each))
  const own = foreign.get(word ?? '')
  if (word === undefined || own === undefined) return null
  const from = written(at).toLowerCase().indexOf(word)
  const place = from < 0 ? at : { start: at.start + from, end: at.start + from + word.length }
  return diagnose('word-of-other-terms', place, { row, word, other: terms === 'us' ? 'UK' : 'US', own })
}

function spelling({ dictionary, names }: Reporting, words: string): string | null {
  const found = misspelt(words.split(' '), [...names.known.keys(), ...dictionary.stitches.keys()])
  return found === null ? null : `“${found.word}” may be “${found.meant}”.`
}

/** A row that could not be read; null where the cause has been told already. */
export function unreadFinding(reporting: Reporting, row: ReadRow, name: string): Diagnostic | null {
  if (row.broken || row.unread === null || specialUnread(reporting, row) !== null) return null
  const { at, words, expected, mark } = row.unread
  if (mark !== null) return diagnose('repeat-without-mark', at, { row: name, mark })
  const foreign = foreignFinding(reporting, row.unread, name)
  if (foreign !== null) return foreign
  const instead = spelling(reporting, words)
  return diagnose('row-unread', at, { row: name, words: wordsUnread(reporting, row.unread), expected, instead })
}

/** `1–4, 6`: the numbers of the rows of a piece so far, over all sizes. */
function rowsThere(piece: Piece): string {
  const numbers = [...new Set(piece.steps.flatMap((steps) => [...steps.keys()]))].sort((a, b) => a - b)
  const runs: [number, number][] = []
  for (const number of numbers) {
    const last = runs.at(-1)
    if (last !== undefined && last[1] === number - 1) last[1] = number
    else runs.push([number, number])
  }
  return runs.map(([from, to]) => (from === to ? String(from) : `${from}–${to}`)).join(', ')
}

/** What keeps a row from being laid out; null when nothing does. */
export function planFinding(reporting: Reporting, piece: Piece, row: ReadRow, plan: Plan): Diagnostic | null {
  const name = rowName(labelFor(row, plan.entries[0]?.number ?? null))
  switch (plan.trouble?.kind) {
    case undefined:
      return null
    case 'unknown row':
      return diagnose('unknown-row-reference', row.steps, {
        row: name,
        number: plan.trouble.number,
        rows: rowsThere(piece),
      })
    case 'no row gauge':
      return diagnose('row-gauge-missing', row.steps, { row: name })
    case 'too long':
      return diagnose('range-too-long', row.at, { most: longestRange })
    case 'rows differ': {
      const { named, taken, by } = plan.trouble
      const concerned = { sizes: plan.troubled.length === plan.cycles.length ? [] : plan.troubled }
      return by === 'shaping'
        ? diagnose('shaping-rows-differ', row.steps, { named, shaped: taken }, concerned)
        : diagnose('repeated-rows-differ', row.steps, { named, repeated: taken }, concerned)
    }
    case 'on foundation':
      return diagnose('repeats-foundation-row', row.steps, { row: name, number: plan.trouble.number })
    case 'not as said': {
      const expected = `a row that ${plan.trouble.change > 0 ? 'increases' : 'decreases'}`
      return diagnose('row-unread', row.steps, {
        row: name,
        words: reporting.words(row.steps),
        expected,
        instead: null,
      })
    }
    case 'unknown name':
      return diagnose('unknown-row-name', row.steps, { row: name, called: plan.trouble.name })
    case 'never there': {
      const { from, by, to } = plan.trouble
      return diagnose('shaping-never-there', row.steps, { row: name, from, by, to }, { sizes: plan.troubled })
    }
  }
}
