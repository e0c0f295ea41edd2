import type { PlaceKind } from '../../rows/fabric.ts'
import { closed } from '../path.ts'
import type { Density, Plan, Span } from '../plan.ts'
import type { FlatRow } from './laid.ts'
import { layFlat } from './laid.ts'
import { outlineOf } from './outline.ts'
import { partsOf } from './parts.ts'
import type { CountedSpan } from './spans.ts'
import { flatSpans } from './spans.ts'

/** Lays a flat piece out and measures it; null where none of its rows could be laid. */
export function flatPlan(rows: readonly FlatRow[], kinds: readonly PlaceKind[], density: Density): Plan | null {
  const part = partsOf(layFlat(rows, kinds))
  if (part === null) return null
  const outline = outlineOf(part).map(({ x, y }) => ({ x: x / density.stitches, y: y / density.rows }))
  const [across, up] = [outline.map(({ x }) => x), outline.map(({ y }) => y)]
  return {
    left: Math.min(...across),
    right: Math.max(...across),
    bottom: Math.min(...up),
    top: Math.max(...up),
    spans: flatSpans(part).map((span) => inCentimetres(span, density)),
    lines: ({ place }) => [{ look: 'shape', path: closed(outline.map(({ x, y }) => place(x, y))) }],
  }
}

function inCentimetres(span: CountedSpan, { stitches, rows }: Density): Span {
  const [along, beside] = span.direction === 'across' ? [stitches, rows] : [rows, stitches]
  return {
    ...span,
    from: span.from / along,
    to: span.to / along,
    at: span.at / beside,
    count: span.to - span.from,
    of: span.direction === 'across' ? 'stitches' : 'rows',
  }
}
