import type { Composer } from './composer.ts'
import type { Grid } from './grid.ts'
import { measureRuns } from './line.ts'

/** What a column needs for whole lines, and for its longest word; points. */
export interface Need {
  readonly whole: number
  readonly word: number
}

export interface GridWidths {
  readonly needs: readonly Need[]
  /** Widths of the table, spaces between columns included: for whole lines, and for the longest words at least. */
  readonly whole: number
  readonly least: number
}

/** Widths that a table needs with `space` points between its columns. */
export function gridWidths(grid: Grid, space: number, composer: Composer): GridWidths {
  const count = Math.max(...grid.map((cells) => cells.length))
  const needs = Array.from({ length: count }, (_, column): Need => {
    const cells = grid.map((cells) => measureRuns(composer, cells[column]?.runs ?? []))
    return { whole: Math.max(...cells.map((need) => need.whole)), word: Math.max(...cells.map((need) => need.word)) }
  })
  const spaces = space * (count - 1)
  return { needs, whole: total(needs, 'whole') + spaces, least: total(needs, 'word') + spaces }
}

const total = (needs: readonly Need[], kind: keyof Need): number => needs.reduce((sum, need) => sum + need[kind], 0)

/** Whole lines where they fit; else every column its longest word and a share of what is left; else a share of all. */
export function shareWidth(needs: readonly Need[], room: number): readonly number[] {
  const whole = total(needs, 'whole')
  const words = total(needs, 'word')
  if (whole <= room) return needs.map((need) => need.whole)
  if (words >= room) return needs.map((need) => Math.max(12, (room * need.word) / words))
  return needs.map((need) => need.word + ((room - words) * (need.whole - need.word)) / (whole - words))
}
