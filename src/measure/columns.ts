import type { Segment } from './segment.ts'
import type { PerSize } from './value.ts'

/** What stands for a size to which a value does not apply. */
export const notForThisSize = '–'

/** The same text in every view. */
export function always(text: string): Segment {
  return { text, show: 'always' }
}

/** The sizes side by side, the first outside the bracket: `60 (72, 84)`. */
export function columns(cells: PerSize<string>): readonly Segment[] {
  return cells.flatMap((text, size) => [
    ...(size === 0 ? [] : [between(size === 1 ? ' (' : ', ')]),
    { text, show: size },
    ...(size > 0 && size === cells.length - 1 ? [between(')')] : []),
  ])
}

function between(text: string): Segment {
  return { text, show: 'columns' }
}

/** Printed once where all sizes agree, side by side where they do not. */
export function onceOrColumns(cells: PerSize<string>): readonly Segment[] {
  return agree(cells) ? [always(cells[0] ?? '')] : columns(cells)
}

export function agree(cells: PerSize<string>): boolean {
  return cells.every((cell) => cell === cells[0])
}
