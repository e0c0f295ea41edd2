import Fraction from 'fraction.js'
import type { Numeric, PerSize, Segment } from '../measure/index.ts'
import { printMeasure, textForAll } from '../measure/index.ts'
import type { Dimension } from './dimensions.ts'
import { drawAcross, drawBeside, drawWithin, labelSize } from './dimensions.ts'
import type { Drawing, DrawnValue, Figure, Measure } from './drawing.ts'
import { roomFor } from './drawing.ts'
import type { Plan, Scale, Span } from './plan.ts'

/** Stitches and rows in one centimetre, exactly, and the unit that the swatch was measured in. */
export interface SchematicGauge {
  readonly stitches: Fraction
  readonly rows: Fraction
  readonly unit: 'cm' | 'in'
}

export interface Sketch {
  /** Of each size; null for one that does not work the piece. */
  readonly plans: PerSize<Plan | null>
  /** The size whose shape is drawn. */
  readonly size: number
  readonly gauge: SchematicGauge
  /** Gives a printed value its number. */
  readonly value: (segments: readonly Segment[]) => DrawnValue
}

/** Most room for the piece itself, in points: with its labels it fits on a phone and in a column of print. */
const [mostWidth, mostHeight] = [190, 230]
/** Wider than this, with all sizes side by side, its letters could not be read on a phone. */
const widest = 370
/** A longer text than this, all sizes side by side, is no label. */
const longestLabel = 112

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'

/** The measure of a span for every size; a dash for a size whose shaping has none. */
function measureOf({ key }: Span, { plans, gauge }: Sketch): Numeric {
  const bySize = plans.map((plan) => {
    const own = plan?.spans.find((span) => span.key === key)
    return own === undefined ? null : new Fraction(own.count).div(gauge[own.of])
  })
  return { kind: 'length', unit: gauge.unit, bySize }
}

interface Measured extends Measure {
  readonly span: Span
  /** In the draft's unit and in the other one. */
  readonly lines: readonly (readonly Segment[])[]
}

function measuredSpans(sketch: Sketch, spans: readonly Span[]): readonly Measured[] {
  const { unit } = sketch.gauge
  return spans.map((span, index) => {
    const measure = measureOf(span, sketch)
    const lines = [unit, unit === 'cm' ? 'in' : 'cm'] as const
    return {
      span,
      letter: letters[index] ?? String(index + 1),
      name: span.name,
      value: sketch.value(printMeasure(measure, null)),
      lines: lines.map((each) => printMeasure(measure, { kind: 'unit', unit: each, step: null })),
    }
  })
}

function isLong({ lines }: Measured): boolean {
  return lines.some((segments) => roomFor(textForAll(segments), labelSize) > longestLabel)
}

/** Where the piece lies in its drawing, its upper left corner at `x` and `y`. */
function scaleOf({ left, right, bottom, top }: Plan, x: number, y: number): Scale {
  const scale = Math.min(mostWidth / Math.max(right - left, 0.1), mostHeight / Math.max(top - bottom, 0.1))
  return {
    place: (across, up) => ({ x: x + (across - left) * scale, y: y + (top - up) * scale }),
    length: (centimetres) => centimetres * scale,
  }
}

const edge = 4

function draw(plan: Plan, dimensions: readonly Dimension[], sizes: number): Drawing {
  const on = (side: Span['side']): readonly Dimension[] => dimensions.filter(({ span }) => span.side === side)
  // How far the labels reach is known before the piece has its place.
  const trial = scaleOf(plan, 0, 0)
  const reach = {
    left: drawBeside(on('left'), 0, -1, trial, sizes).reach,
    above: drawAcross(on('above'), 0, -1, trial, sizes).reach,
  }
  const scale = scaleOf(plan, reach.left + edge, reach.above + edge)
  const [start, end] = [scale.place(plan.left, plan.top), scale.place(plan.right, plan.bottom)]
  const right = drawBeside(on('right'), end.x, 1, scale, sizes)
  const below = drawAcross(on('below'), end.y, 1, scale, sizes)
  const all = [
    drawBeside(on('left'), start.x, -1, scale, sizes),
    drawAcross(on('above'), start.y, -1, scale, sizes),
    right,
    below,
    drawWithin(on('within'), scale),
  ]
  return {
    width: end.x + right.reach + edge,
    height: end.y + below.reach + edge,
    lines: [...plan.lines(scale), ...all.flatMap(({ lines }) => lines)],
    labels: all.flatMap(({ labels }) => labels),
  }
}

/** The drawing of a piece with its measures for every size; null where no size works the piece. */
export function drawSchematic(name: string, sizeName: string | null, sketch: Sketch): Figure | null {
  const plan = sketch.plans[sketch.size] ?? null
  if (plan === null) return null
  const measured = measuredSpans(sketch, plan.spans)
  const dimensions = measured.map(({ span, lines }) => ({
    span,
    letter: null,
    lines: [...(span.word === undefined ? [] : [span.word]), ...lines.map(sketch.value)],
  }))
  const whole = draw(plan, dimensions, sketch.plans.length)
  const lettered = measured.some(isLong) || whole.width > widest
  const letterings = dimensions.map((each, index) => ({ ...each, letter: measured[index]?.letter ?? null }))
  const words = measured.map(({ name, value }) => `${name} ${textForAll(value.segments)}`)
  return {
    kind: 'schematic',
    piece: name,
    caption: sizeName === null ? name : `${name}, drawn in size ${sizeName}`,
    alt: lettered ? `Schematic: ${name}. Its measures are listed below.` : `Schematic: ${name}. ${words.join('; ')}.`,
    drawing: lettered ? draw(plan, letterings, sketch.plans.length) : whole,
    measures: measured.map(({ letter, name, value }) => ({ letter, name, value })),
    lettered,
    key: [],
  }
}
