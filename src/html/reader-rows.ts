import type { Block, RowBlock } from '../pattern/node.ts'
import type { Pattern } from '../pattern/pattern.ts'
import type { LedgerRow } from '../rows/ledger.ts'

/** A row of the page, in the order of the page. */
export interface RowData {
  /** The id of its element. */
  readonly id: string
  /** Position of its piece. */
  readonly piece: number
  /** What its rows are called: `Rnd`, `Edging rnd`, `Foundation`; null without a label. */
  readonly word: string | null
  /** The number of the first of them, where they are numbered one by one; for every size, or one each. */
  readonly from: number | null | readonly (number | null)[]
  /**
   * Stitches of each row that it stands for, in order: `60*16+72` is sixteen rows of 60 and one of 72, `?` one that could not
   * be worked. For every size, or one each; null for a size that does not work it.
   */
  readonly work: string | null | readonly (string | null)[]
}

export function rowsData({ body, rows, pieces, sizes }: Pattern): RowData[] {
  const names = pieces.map(({ name }) => name)
  return rowBlocks(body, null).map(({ block, only }) => {
    const entries = rows.slice(...block.entries)
    const bySize = sizes.map((_, size) => (only === null || only.includes(size) ? forSize(entries, size) : null))
    return {
      id: block.id,
      piece: names.indexOf(entries[0]?.piece ?? ''),
      word: wordOf(entries[0]?.label ?? null),
      from: onceOrEach(bySize.map((own) => own?.from ?? null)),
      work: onceOrEach(bySize.map((own) => own?.work ?? null)),
    }
  })
}

interface Found {
  readonly block: RowBlock
  /** Sizes that work it, as positions; null for all. */
  readonly only: readonly number[] | null
}

/** Every row of a text with the sizes that its surroundings leave it for. */
function rowBlocks(blocks: readonly Block[], only: Found['only']): Found[] {
  return blocks.flatMap((block) => {
    if (block.type === 'row') return [{ block, only: block.only ?? only }]
    if (block.type === 'list') return block.items.flatMap((item) => rowBlocks(item, only))
    if (block.type === 'only') return rowBlocks(block.children, block.sizes)
    return block.type === 'quote' ? rowBlocks(block.children, only) : []
  })
}

interface OfSize {
  readonly from: number | null
  readonly work: string
}

/** The rows of a size; a row that could not be worked still is one. */
function forSize(entries: readonly LedgerRow[], size: number): OfSize | null {
  const own = entries.filter(({ status, total }) => status !== 'worked' || (total[size] ?? null) !== null)
  if (own.length === 0) return null
  return { from: firstNumber(own), work: runs(own.map(({ total }) => total[size] ?? null)) }
}

/** `60*16+72` */
function runs(totals: readonly (number | null)[]): string {
  const found: { total: number | null; times: number }[] = []
  for (const total of totals) {
    const last = found.at(-1)
    if (last !== undefined && last.total === total) last.times += 1
    else found.push({ total, times: 1 })
  }
  return found.map(({ total, times }) => `${total ?? '?'}${times === 1 ? '' : `*${times}`}`).join('+')
}

const numbered = /^(.*?)\s*(\d+)$/

/** `Rnd` of `Rnd 7`. */
function wordOf(label: string | null): string | null {
  return label === null ? null : (numbered.exec(label)?.[1] ?? label)
}

function firstNumber(rows: readonly LedgerRow[]): number | null {
  const numbers = rows.map(({ label }) => Number(numbered.exec(label ?? '')?.[2] ?? Number.NaN))
  const [first = Number.NaN] = numbers
  return numbers.every((number, index) => number === first + index) ? first : null
}

/** What all sizes share stands once. */
export function onceOrEach<T>(bySize: readonly T[]): T | readonly T[] {
  const [first] = bySize
  return first !== undefined && bySize.every((each) => each === first) ? first : bySize
}
