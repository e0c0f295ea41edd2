import { type Claim, claimedFor } from './claims.ts'
import { aliasesOf } from './naming.ts'
import {
  heldThroughout,
  type Spoken,
  type Strands,
  spokenBetween,
  spokenInHeading,
  spokenInRow,
  type YarnReader,
} from './spoken.ts'

/** A row as its draft writes it, with the words since the row before. */
export interface SpokenRow {
  readonly piece: string
  /** Prose since the row before, in the order of the text; null in place of what belongs to other sections. */
  readonly between: readonly string[]
  /** The heading above it where it opens a section, else null. */
  readonly heading: string | null
  readonly label: string
  readonly steps: string
  /** Its entries in the ledger, by their numbers; null for a row without a number. */
  readonly numbers: readonly (number | null)[]
}

const repeats =
  /^\W*(?:(?:rep|repeat|work|same|as|like)\b[^.;]*?\b)(?:rows?|rnds?|rounds?)\s+(?<from>\d+)(?:\s*(?:[-–]|to|through|thru)\s*(?<to>\d+)|(?<more>(?:\s*,\s*\d+)*\s*,?\s*(?:and|&)\s*\d+))?/i
const begins =
  /\b(?:magic|adjustable|MR|MC ring|foundation|fsc|fdc)\b|\bform(?:s|ing)? (?:a )?ring\b|\bch(?:ain)? (?:\d\d|\{\{)/i

/** Numbers of the rows that a row repeats, in their order; none where it is worked by its own words. */
function repeatedBy(steps: string): readonly number[] {
  const { from, to, more } = repeats.exec(steps)?.groups ?? {}
  if (from === undefined) return []
  const [first, last] = [Number(from), Number(to ?? from)]
  if (last - first > 1000) return []
  const range = Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index)
  return [...range, ...(more?.match(/\d+/g) ?? []).map(Number)]
}

interface State {
  strands: Strands
  piece: string
  /** What each row of the piece says, by its number: a row that is repeated is said once more. */
  readonly said: Map<number, Spoken>
}

/**
 * The yarn of every entry of the ledger. What the facts claim comes first, then what the words say; where both are
 * silent a row goes on with the yarn before it, and the first one is the draft's first.
 *
 * @param opening all prose before the first row
 */
export function assignYarns(
  names: readonly string[],
  opening: string,
  rows: readonly SpokenRow[],
  claims: readonly Claim[],
): readonly Strands[] {
  const reader: YarnReader = { yarns: names.length, aliases: names.length > 1 ? aliasesOf(names) : [] }
  const first = heldThroughout(opening, reader) ?? names.map((_, yarn) => (yarn === 0 ? 1 : 0))
  const state: State = { strands: first, piece: '', said: new Map() }
  return rows.flatMap((row) => {
    openRow(state, row, reader, first)
    const own = spokenInRow(row.label, row.steps, reader)
    const repeated = own.now === undefined && own.next === undefined ? repeatedBy(row.steps) : []
    return row.numbers.map((number, index) => {
      const spoken = state.said.get(repeated[index % repeated.length] ?? -1) ?? own
      if (number !== null) state.said.set(number, spoken)
      if (spoken.now !== undefined) state.strands = spoken.now
      const worked = claimed(claims, row.piece, number, names.length) ?? state.strands
      if (spoken.next !== undefined) state.strands = spoken.next
      return worked
    })
  })
}

/** The yarn at hand before a row: prose may change it, and a new piece that is begun afresh starts with the first yarn. */
function openRow(state: State, row: SpokenRow, reader: YarnReader, first: Strands): void {
  const heading = row.heading === null ? {} : spokenInHeading(row.heading, reader)
  if (row.piece !== state.piece) {
    state.piece = row.piece
    state.said.clear()
    if (begins.test(row.steps.slice(0, 80))) state.strands = first
  }
  const said = [...row.between.map((text) => spokenBetween(text, reader))]
  for (const { next } of [heading, ...said]) if (next !== undefined) state.strands = next
}

function claimed(claims: readonly Claim[], piece: string, number: number | null, yarns: number): Strands | undefined {
  const named = claimedFor(claims, piece, number)
  return named.length === 0 ? undefined : Array.from({ length: yarns }, (_, yarn) => (named.includes(yarn) ? 1 : 0))
}
