import { roundedSquare } from './operators.ts'
import type { Strip } from './strip.ts'
import { colours, leading } from './style.ts'

const box = roundedSquare(7.5, 1)
const pitch = 11
const groupSpace = 6

/** One box beside the first line of a row. */
export function tickBox(strips: readonly Strip[], x: number): readonly Strip[] {
  return strips.map((strip, index) => {
    if (index > 0) return strip
    const draw: Strip['draw'] = (pen, top) => {
      pen.boxes([[x, top + 4]], box, colours.soft)
      strip.draw(pen, top)
    }
    return { ...strip, draw }
  })
}

/** A box for each row of a range, in groups of five, from `x` on and no wider than `width`. */
export function tickBoxes(count: number, x: number, width: number): readonly Strip[] {
  const groups = Math.max(1, Math.floor((width + groupSpace) / (5 * pitch + groupSpace)))
  const perLine = groups * 5
  return Array.from({ length: Math.ceil(count / perLine) }, (_, line) => {
    const boxes = Math.min(perLine, count - line * perLine)
    const lefts = Array.from({ length: boxes }, (_, index) => x + index * pitch + Math.floor(index / 5) * groupSpace)
    return {
      height: leading.text,
      gap: 0,
      keep: true,
      draw: (pen, top) => {
        const corners = lefts.map((left) => [left, top + 4] as const)
        pen.boxes(corners, box, colours.soft)
      },
    }
  })
}
