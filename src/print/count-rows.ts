import type { Block, RowBlock } from '../pattern/node.ts'
import type { Pattern } from '../pattern/pattern.ts'
import type { LedgerRow } from '../rows/ledger.ts'
import { partsOf } from './blocks/row-parts.ts'
import { plainText } from './inline.ts'

/** The rows of one piece with their counts. */
export interface CountPiece {
  readonly title: string
  readonly rows: readonly CountRow[]
}

export interface CountRow {
  /** `Rnd 2 (RS)` */
  readonly head: string
  /** The row's own numbers where they differ by size, a cell for each; null where they do not. */
  readonly numbers: readonly string[] | null
  /** Stitches at the end of the row; a dash for a size that does not work it. */
  readonly counts: readonly string[]
}

/** What stands for a row that was not worked, and for a size that does not have it. */
const none = '–'

/** Every row of the draft in its order, by piece, with the stitches that each size has at its end. */
export function countRows(pattern: Pattern): readonly CountPiece[] {
  const pieces: { title: string; rows: CountRow[] }[] = []
  for (const block of rowsIn(pattern.body)) {
    const title = pattern.rows[block.entries[0]]?.piece ?? ''
    const row = countRow(block, pattern)
    const last = pieces.at(-1)
    if (last?.title === title) last.rows.push(row)
    else pieces.push({ title, rows: [row] })
  }
  return pieces
}

function rowsIn(blocks: readonly Block[]): readonly RowBlock[] {
  return blocks.flatMap((block): readonly RowBlock[] => {
    if (block.type === 'row') return [block]
    if (block.type === 'list') return block.items.flatMap(rowsIn)
    return 'children' in block && block.type !== 'heading' && block.type !== 'paragraph' ? rowsIn(block.children) : []
  })
}

function countRow(block: RowBlock, { sizes, rows }: Pattern): CountRow {
  const { label, lines } = partsOf({ ...block, steps: [], stated: [] }, sizes.length)
  const words = plainText(label, sizes).replace(/:$/, '')
  const [first, end] = block.entries
  const worked = rows.slice(first, end).toReversed()
  const counts = sizes.map((_, size) => countAtEnd(worked, size))
  const chained = counts.some(({ chains }) => chains)
  return {
    head: `${words === '' ? 'Row' : words}${chained ? ', ch' : ''}`,
    numbers: lines[0]?.cells.map((cell) => cell.replaceAll(' and ', ', ')) ?? null,
    counts: counts.map(({ count }) => (count === null ? none : String(count))),
  }
}

/** What a size has at the end of rows, given from the last to the first: stitches, or chains where nothing else was made. */
function countAtEnd(
  rows: readonly LedgerRow[],
  size: number,
): { readonly count: number | null; readonly chains: boolean } {
  const last = rows.find((row) => (row.total[size] ?? null) !== null)
  const total = last?.total[size] ?? null
  const chains = last?.counts.ch?.[size] ?? 0
  return total === 0 && chains > 0 ? { count: chains, chains: true } : { count: total, chains: false }
}
