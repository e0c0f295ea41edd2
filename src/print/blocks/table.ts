import type { BlockOf, Inline } from '../../pattern/node.ts'
import type { Composer, Strips } from '../composer.ts'
import type { Cell } from '../grid.ts'
import { setGrid } from '../grid.ts'
import { readRuns } from '../inline.ts'

/** A designer's table; its first row is the header. */
export function setTable(block: BlockOf<'table'>, composer: Composer): Strips {
  const { sizes, look } = composer
  const cell = (nodes: readonly Inline[], column: number, heads: Cell['heads']): Cell => ({
    runs: readRuns(nodes, { style: heads === null ? look.styles.cell : look.styles.headCell, sizes }),
    align: block.align[column] ?? 'left',
    heads,
  })
  const header = block.head.map((nodes, column) => cell(nodes, column, 'Column'))
  const rows = block.rows.map((cells) => cells.map((nodes, column) => cell(nodes, column, null)))
  return setGrid([header, ...rows], composer)
}
