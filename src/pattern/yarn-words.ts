import { evaluate, plainBySize, readFormula } from '../formula/index.ts'
import type { Ledger, WrittenRow } from '../rows/ledger.ts'
import type { SpokenRow } from '../yarn/assign.ts'
import type { Draft } from './draft.ts'
import { textAt } from './draft.ts'
import type { Graded } from './grade.ts'

/** The words under which rows are worked: each row with what stands before it, and each piece with its heading and prose. */
export interface YarnWords {
  /** All prose before the first row. */
  readonly opening: string
  readonly rows: readonly SpokenRow[]
  readonly pieces: ReadonlyMap<string, PieceWords>
}

interface PieceWords {
  /** As it is written, placeholders included. */
  readonly heading: string
  readonly prose: string
}

/** What stands between two rows: prose that goes on with the piece, then the last heading with the prose under it. */
interface Gap {
  readonly before: string
  readonly heading: string | null
  readonly after: string
}

const fences = /^ {0,3}(```|~~~)[\s\S]*?^ {0,3}\1.*$/gm

function gapOf(text: string): Gap {
  const prose = text.replace(fences, '')
  const headings = [...prose.matchAll(/^ {0,3}#{1,6} +(.*)$/gm)]
  const [first, last] = [headings[0], headings.at(-1)]
  if (first === undefined || last === undefined) return { before: prose, heading: null, after: '' }
  return {
    before: prose.slice(0, first.index),
    heading: last[1] ?? '',
    after: prose.slice(last.index + last[0].length),
  }
}

/** The words around the rows of a draft, in the order of its text. */
export function yarnWords(draft: Draft, { rows, written }: Ledger): YarnWords {
  const inOrder = [...written].sort((a, b) => a.at.start - b.at.start)
  const spoken: SpokenRow[] = []
  const pieces = new Map<string, PieceWords>()
  let last: string | null = null
  let end = draft.bodyStart
  for (const row of inOrder) {
    const gap = gapOf(draft.source.text.slice(end, Math.max(end, row.at.start)))
    end = Math.max(end, endOf(draft, row))
    const piece: string = rows[row.entries[0]]?.piece ?? last ?? ''
    if (last !== null) addProse(pieces, last, gap.before)
    const own = pieces.get(piece) ?? { heading: gap.heading ?? piece, prose: '' }
    pieces.set(piece, { ...own, prose: own.prose + gap.after })
    spoken.push({ ...spokenRow(draft, row, rows), piece, heading: gap.heading, between: betweenOf(gap, last) })
    last = piece
  }
  if (last !== null) addProse(pieces, last, gapOf(draft.source.text.slice(end)).before)
  const first = inOrder[0]?.at.start ?? end
  return { opening: draft.source.text.slice(draft.bodyStart, first).replace(fences, ''), rows: spoken, pieces }
}

/** A line of a table to its end: a column may name the colour. */
function endOf({ source: { text } }: Draft, { at }: WrittenRow): number {
  const line = text.slice(text.lastIndexOf('\n', at.start) + 1, at.start)
  const next = text.indexOf('\n', at.end)
  return line.trimStart().startsWith('|') && next >= 0 ? next : at.end
}

/** Before the first row of all, only what stands under the last heading speaks of it. */
function betweenOf({ before, after }: Gap, last: string | null): readonly string[] {
  return last === null ? [after] : [before, after]
}

function addProse(pieces: Map<string, PieceWords>, piece: string, prose: string): void {
  const own = pieces.get(piece)
  if (own !== undefined) pieces.set(piece, { ...own, prose: own.prose + prose })
}

function spokenRow(
  draft: Draft,
  row: WrittenRow,
  rows: Ledger['rows'],
): Pick<SpokenRow, 'label' | 'steps' | 'numbers'> {
  const { at, steps } = row
  const [first, end] = row.entries
  return {
    label: textAt(draft, { start: at.start, end: Math.max(at.start, steps.start) }),
    steps: textAt(draft, { start: steps.start, end: endOf(draft, row) }),
    numbers: rows.slice(first, end).map(({ label }) => numberOf(label)),
  }
}

/** `Edging rnd 4` is 4; null for a row without a number. */
export function numberOf(label: string | null): number | null {
  const digits = /\d+/.exec(label ?? '')?.[0]
  return digits === undefined ? null : Number(digits)
}

/** Words with the numbers of a size in place of their placeholders; one that is no number stays as it stands. */
export function wordsForSize(words: string, size: number, { settled, environment }: Graded): string {
  return words.replace(/\{\{(.{1,300}?)\}\}/g, (whole, formula: string) => {
    const read = readFormula(formula, 0)
    const value = read.value === null ? null : evaluate(read.value, settled, environment).value
    const number = value === null ? null : (plainBySize(value)[size] ?? null)
    return number === null ? whole : String(number)
  })
}
