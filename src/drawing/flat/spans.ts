import type { Span } from '../plan.ts'
import type { Course } from './course.ts'
import { courseOf, lastAlike } from './course.ts'
import type { Part } from './parts.ts'
import { leastStep } from './steps.ts'

/** A span in the piece's own places: across in stitches, up in rows. */
export type CountedSpan = Omit<Span, 'count' | 'of'>

interface Told {
  /** The row in which the width is told. */
  readonly at: number
  readonly width: number
  readonly afterStep: boolean
}

/** The widths that are told, each once, from the lower edge up. */
function toldWidths({ widths, stretches }: Course): readonly Told[] {
  const told = stretches.flatMap(({ turns }, index) => {
    const own = index === 0 || turns.length === 1 ? turns : turns.slice(1)
    return own.map((at) => ({ at, width: widths[at] ?? 0, afterStep: index > 0 }))
  })
  return told.filter(({ width }, index) => index === 0 || width !== told[index - 1]?.width)
}

function nameOf({ width, afterStep }: Told, before: Told): string {
  if (afterStep) return 'Width above the shaping'
  return width > before.width ? 'Width at the widest' : 'Width at the narrowest'
}

function isTop(part: Part): boolean {
  return part.parts.length === 0
}

/** The widths of a piece below its opening, from the lower edge up. */
function acrossOf(part: Part, course: Course): readonly CountedSpan[] {
  const told = toldWidths(course)
  const last = part.rows.at(-1)
  const upper = isTop(part) && last !== undefined ? last : null
  const whole = upper !== null && told.length === 1 && upper.right - upper.left === told[0]?.width
  const spans = told.flatMap((each, index): CountedSpan[] => {
    const row = part.rows[each.at]
    const before = told[index - 1]
    if (row === undefined) return []
    const across = { direction: 'across', from: row.left, to: row.right } as const
    if (before === undefined) {
      const name = whole ? 'Width' : 'Width at lower edge'
      return [{ ...across, key: 'lower', name, side: 'below', at: row.bottom }]
    }
    // What is arrived at last is the upper edge, and told there.
    if (upper !== null && index === told.length - 1) return []
    return [{ ...across, key: `turn ${index}`, name: nameOf(each, before), side: 'within', at: row.top }]
  })
  if (upper === null || whole) return spans
  const across = { direction: 'across', from: upper.left, to: upper.right, at: upper.top } as const
  return [...spans, { ...across, key: 'upper', name: 'Width at top', side: 'above' }]
}

/** Heights at which shaping begins: a step at an edge, or a turn after which the piece grows narrower. */
function levelsOf(part: Part, { widths, stretches }: Course): readonly number[] {
  const height = part.rows.at(-1)?.top ?? 0
  const steps = stretches.slice(0, -1).map(({ end }) => part.rows[end - 1]?.top ?? 0)
  const turns = stretches.flatMap(({ turns }) =>
    turns.slice(1, -1).flatMap((turn, index) => {
      const grown = (widths[turn] ?? 0) > (widths[turns[index] ?? 0] ?? 0)
      return grown ? [part.rows[lastAlike(widths, turn)]?.top ?? 0] : []
    }),
  )
  const levels = [...new Set([...steps, ...turns])].sort((a, b) => a - b)
  return levels.filter((level) => level > height * 0.05 && level < height * 0.95)
}

function upOf(part: Part, course: Course, top: number): readonly CountedSpan[] {
  const levels = levelsOf(part, course)
  if (levels.length === 0) return []
  const ends = [0, ...levels, top]
  const at = part.rows[0]?.left ?? 0
  return ends.slice(1).map((to, index): CountedSpan => {
    const last = index === levels.length
    const name = index === 0 ? 'Lower edge to shaping' : last ? 'Shaping to top' : 'Shaping to next shaping'
    return { key: `level ${index}`, name, direction: 'up', side: 'left', from: ends[index] ?? 0, to, at }
  })
}

/** The last row of a part before it ends in steps, as a shoulder does. */
function shoulderOf(part: Part): Part['rows'][number] | undefined {
  const { rows } = part
  let at = rows.length - 1
  const width = (index: number): number => (rows[index]?.right ?? 0) - (rows[index]?.left ?? 0)
  while (at > 0 && width(at - 1) - width(at) >= leastStep) at -= 1
  return rows[at]
}

/** What parts that go on side by side leave open between them. */
function openingOf(part: Part, top: number): readonly CountedSpan[] {
  const floor = part.rows.at(-1)?.top ?? 0
  const [first, second] = part.parts
  const side = first === undefined ? undefined : shoulderOf(first)
  const [left, right] = [first?.rows.at(-1), second?.rows.at(-1)]
  if (side === undefined || left === undefined || right === undefined) return []
  const spans: CountedSpan[] = [
    {
      key: 'beside',
      name: 'Width beside the opening',
      direction: 'across',
      side: 'above',
      from: side.left,
      to: side.right,
      at: side.top,
    },
    {
      key: 'depth',
      name: 'Depth of the opening',
      direction: 'up',
      side: 'right',
      from: floor,
      to: top,
      at: right.right,
    },
  ]
  if (right.left - left.right < leastStep) return spans
  const across = { direction: 'across', side: 'above', from: left.right, to: right.left, at: top } as const
  return [...spans, { ...across, key: 'opening', name: 'Width of the opening' }]
}

function topOf(part: Part): number {
  return Math.max(part.rows.at(-1)?.top ?? 0, ...part.parts.map(topOf))
}

/** All that is measured on a flat piece, in the order in which it is listed. */
export function flatSpans(part: Part): readonly CountedSpan[] {
  const course = courseOf(part)
  const top = topOf(part)
  const right = Math.max(...part.rows.map((row) => row.right))
  const height: CountedSpan = {
    key: 'height',
    name: 'Height',
    direction: 'up',
    side: 'right',
    from: 0,
    to: top,
    at: right,
  }
  return [...acrossOf(part, course), ...openingOf(part, top), height, ...upOf(part, course, top)]
}
