import type { Fabric } from './attempt.ts'
import { bareFabric } from './attempt.ts'
import type { ReadRow } from './cut.ts'
import type { CountedRows } from './side-check.ts'
import type { Side } from './sides.ts'
import type { Step } from './step.ts'
import type { Trouble } from './troubles.ts'
import type { Resting } from './work/state.ts'

/** A row of a piece that has been worked for a size. */
export interface PastRow {
  readonly number: number | null
  readonly steps: readonly Step[]
  readonly total: number
}

/** A piece in the making, size by size. */
export interface Piece {
  readonly name: string
  readonly fabrics: Fabric[]
  /** Sizes that can't go on. */
  readonly broken: boolean[]
  /** Sizes that do not work this piece: its foundation has none for them. */
  readonly skipped: boolean[]
  readonly steps: Map<number, readonly Step[]>[]
  /** Steps by what a row was called: `dec row`. */
  readonly called: Map<string, readonly Step[]>[]
  /** Its rows one after the other. */
  readonly history: PastRow[][]
  /** The rows that were repeated last; null where none were. */
  readonly cycles: (readonly (readonly Step[])[] | null)[]
  /** Number of the last row, 0 before the first. */
  readonly last: number[]
  readonly rows: number[]
  /** How many of them stand before its heading. */
  readonly rowsBefore: readonly number[]
  /** Rows with stitches left on purpose, by number. */
  readonly resting: Map<number, Resting>[]
  /** The last row ended with the yarn cut. */
  fastened: boolean
  /** Labels so far, with the sizes that have each. */
  readonly labels: Map<string, Set<number>>
  /** Numbering restarts with each name: `Row`, `Heel row`. The last number of each, by size. */
  readonly lastByName: Map<string, number[]>
  /** Of these the numbers under the name used last, which rows without a number go on with. */
  lasts: number[] | null
  /** The last row's number stood twice or skipped some, which has been told: the next may go on from what it should have been. */
  misnumbered: boolean
  /** The side that faces in the next row, by size; null where no label has said it. */
  readonly sides: (Side | null)[]
  /** Rows since the last one that a label has marked so, in order. */
  readonly unmarked: CountedRows[]
  /** Other ways than the author's habit in which some row has come out: each is told once. */
  readonly departed: Set<string>
  /** What did not come out so far, by size; null for a size where all does. */
  readonly troubles: (Trouble | null)[]
}

function newPiece(name: string, sizes: number, order: number): Piece {
  return {
    name,
    fabrics: new Array<Fabric>(sizes).fill(bareFabric(order)),
    broken: new Array<boolean>(sizes).fill(false),
    skipped: new Array<boolean>(sizes).fill(false),
    steps: Array.from({ length: sizes }, () => new Map()),
    called: Array.from({ length: sizes }, () => new Map()),
    history: Array.from({ length: sizes }, () => []),
    cycles: new Array<null>(sizes).fill(null),
    last: new Array<number>(sizes).fill(0),
    rows: new Array<number>(sizes).fill(0),
    rowsBefore: new Array<number>(sizes).fill(0),
    resting: Array.from({ length: sizes }, () => new Map()),
    fastened: false,
    labels: new Map(),
    lastByName: new Map(),
    lasts: null,
    misnumbered: false,
    sides: new Array<null>(sizes).fill(null),
    unmarked: [],
    departed: new Set(),
    troubles: new Array<null>(sizes).fill(null),
  }
}

const starters = new Set<Step['kind']>(['join', 'ring', 'turn', 'remark', 'fastenOff'])

/** Whether a row begins a piece: a foundation, a ring, foundation stitches. */
export function startsPiece(row: ReadRow): boolean {
  if (row.content?.kind === 'bySize') {
    const options = row.content.options.filter((option) => option !== null)
    return options.length > 0 && options.every((content) => startsPiece({ ...row, content }))
  }
  if (row.content?.kind !== 'steps') return false
  const { steps } = row.content
  const at = steps.findIndex((step) => step.kind !== 'remark')
  const first = steps[at]
  if (first?.kind === 'ring') return true
  if (first?.kind === 'work') {
    if (first.parts.some((part) => part.kind === 'stitch' && part.stitch.style === 'foundation'))
      return row.opensSection
    return first.where.kind === 'ring' && row.opensSection
  }
  if (first?.kind !== 'chain') return false
  const rest = steps.slice(at + 1)
  if (rest.every((step) => starters.has(step.kind))) return true
  const [next] = rest.filter((step) => !(step.kind === 'remark' || step.kind === 'turn'))
  if (next?.kind === 'ring' || next?.kind === 'join') return true
  if (!row.opensSection || next === undefined || !('where' in next)) return false
  // `Ch 12, sl st in first ch, 16 sc in ring.`
  const closes = next.kind === 'slip' && next.where.kind === 'first'
  return closes || next.where.kind === 'fromHook'
}

/** Whether a foundation has none for a size: `ch 40 (none, 48)`, `0 fsc`, `0 sc in magic ring`. */
export function hasNoFoundation(steps: readonly Step[], size: number): boolean {
  const first = steps.find((step) => step.kind !== 'remark' && step.kind !== 'ring')
  if (first?.kind === 'chain') return (first.count[size] ?? 0) === 0
  if (first?.kind !== 'work') return false
  const [part] = first.parts
  if (part?.kind !== 'stitch') return false
  if (first.where.kind === 'ring') return (part.count[size] ?? 0) === 0
  return part.stitch.style === 'foundation' && first.where.kind === 'next' && (first.where.count[size] ?? 0) === 0
}

/** `Size M: ch 72.` after `Size S: ch 66.`: the same piece begins for sizes that have not begun it. */
function beginsForOthers(current: Piece, row: ReadRow): boolean {
  if (row.only === null || row.only.length === 0 || current.name !== row.piece || !startsPiece(row)) return false
  return row.only.every((size) => current.fabrics[size]?.row === null && current.rows[size] === 0)
}

/**
 * The piece that a row belongs to: a new one when it begins with a foundation or a ring; under a new
 * heading without one, the fabric so far goes on under the new name.
 *
 * @param order of the next row in the fabric of the pattern
 */
export function pieceFor(current: Piece | null, row: ReadRow, sizes: number, order: number): Piece {
  if (current !== null && beginsForOthers(current, row)) return current
  if (current === null || startsPiece(row)) {
    const piece = newPiece(row.piece, sizes, order)
    // A second part under the same heading shares its labels: `Row 1` twice is worth a word.
    if (current?.name === row.piece) for (const [label, own] of current.labels) piece.labels.set(label, new Set(own))
    return piece
  }
  if (current.name === row.piece) return current
  const { fabrics, broken, skipped, sides: faces, troubles, rows, resting, fastened, steps, last } = current
  const { called, history, cycles, unmarked } = current
  return {
    ...newPiece(row.piece, sizes, order),
    fabrics,
    broken,
    skipped,
    troubles,
    sides: faces,
    unmarked,
    rows,
    rowsBefore: [...rows],
    resting,
    fastened,
    steps,
    last,
    called,
    history,
    cycles,
  }
}
