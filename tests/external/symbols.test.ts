import { describe, expect, it } from 'vitest'
import type { Stage } from '../../src/drawing/chart/stage.ts'
import * as symbols from '../../src/drawing/chart/symbols.ts'
import type { Line } from '../../src/drawing/drawing.ts'
import { flatChart, placesOf, roundChart } from '../drawing/laid.ts'

/*
 * Craft Yarn Council, Crochet chart symbols (international set, of Japanese origin), handbook 2015 and 2018, page 3. Basic
 * symbols and post hooks were read as descriptions in several articles (“seen”); decreases, groups and loops are from
 * memory of the sheet and of Japanese books. The words are those descriptions, the shapes are this program's own.
 */

/** One unit is a thousand points, so that places can be told from their coordinates. */
const stage: Stage = { point: ({ x, y }) => ({ x: x * 1000, y: -y * 1000 }), scale: 1000 }
const foot = { x: 0, y: 0 }
const head = (high: number) => ({ x: 0, y: high })

interface Found {
  /** Straight strokes along the stem, across it at a right angle, and slanted over it. */
  readonly stems: number
  readonly bars: number
  readonly slashes: number
  readonly curves: number
  readonly ovals: number
  readonly dots: number
}

interface Point {
  readonly x: number
  readonly y: number
}

function pointsOf(path: string): readonly Point[] {
  const numbers = (path.match(/-?[\d.]+/g) ?? []).map((number) => Number(number) / 1000)
  return Array.from({ length: numbers.length / 2 }, (_, at) => ({
    x: numbers[2 * at] ?? 0,
    y: -(numbers[2 * at + 1] ?? 0),
  }))
}

const isOval = ({ path }: Line): boolean => path.includes('C') && path.endsWith('Z')
const isCurve = ({ path }: Line): boolean => path.includes('C') && !path.endsWith('Z')
const isStroke = ({ path }: Line): boolean => !path.includes('C')

/** Upright strokes are stems, level ones bars. Legs of a decrease lean, so a long stroke is a stem however it stands. */
function strokeKind({ path }: Line): 'stems' | 'bars' | 'slashes' {
  const [from = foot, to = foot] = pointsOf(path)
  if (Math.abs(from.y - to.y) < 0.01) return 'bars'
  if (Math.abs(from.x - to.x) < 0.01) return 'stems'
  return Math.hypot(to.x - from.x, to.y - from.y) > 0.52 ? 'stems' : 'slashes'
}

function found(lines: readonly Line[]): Found {
  const strokes = lines.filter(isStroke).map(strokeKind)
  const count = (kind: string): number => strokes.filter((each) => each === kind).length
  return {
    stems: count('stems'),
    bars: count('bars'),
    slashes: count('slashes'),
    curves: lines.filter(isCurve).length,
    ovals: lines.filter((line) => isOval(line) && line.look === 'symbol').length,
    dots: lines.filter((line) => isOval(line) && line.look === 'solid').length,
  }
}

const none: Found = { stems: 0, bars: 0, slashes: 0, curves: 0, ovals: 0, dots: 0 }

const stitch = (
  base: symbols.Look['base'],
  high: number,
  style: symbols.Look['style'] = 'plain',
  loop: symbols.Look['loop'] = 0,
): readonly Line[] => symbols.drawStitch(stage, foot, head(high), { base, style, loop })

const closed = (base: symbols.Look['base'], legs: number, high: number): readonly Line[] => {
  const feet = Array.from({ length: legs }, (_, leg) => ({ x: leg - (legs - 1) / 2, y: 0 }))
  return symbols.drawClosed(stage, feet, head(high), base)
}

const group = (name: symbols.GroupName, base: symbols.Look['base'], legs: number): readonly Line[] =>
  symbols.drawGroup(stage, foot, head(2.4), { name, base, legs })

type How = 'seen' | 'from memory'

const published: readonly (readonly [
  stitch: string,
  words: string,
  how: How,
  lines: readonly Line[],
  expected: Partial<Found>,
])[] = [
  [
    'ch',
    'open oval, long side along the chain',
    'seen',
    [symbols.drawChain(stage, foot, { x: 1, y: 0 })],
    { ovals: 1 },
  ],
  ['sl st', 'small filled oval or dot', 'seen', [symbols.drawSlip(stage, foot)], { dots: 1 }],
  ['sc', 'upright cross (+)', 'seen', stitch('singleCrochet', 1), { bars: 1, stems: 1 }],
  ['hdc', 'T: stem with a bar on top, no slash', 'seen', stitch('halfDoubleCrochet', 1.6), { stems: 1, bars: 1 }],
  ['dc', 'T with one slash across the stem', 'seen', stitch('doubleCrochet', 2.4), { stems: 1, bars: 1, slashes: 1 }],
  ['tr', 'T with two slashes', 'seen', stitch('treble', 3.2), { stems: 1, bars: 1, slashes: 2 }],
  ['dtr', 'T with three slashes', 'seen', stitch('doubleTreble', 4), { stems: 1, bars: 1, slashes: 3 }],
  ['trtr', 'T with four slashes', 'from memory', stitch('tripleTreble', 4.8), { stems: 1, bars: 1, slashes: 4 }],
  [
    'sc in back loop',
    'short arc under its foot, open upward',
    'from memory',
    stitch('singleCrochet', 1, 'plain', 2),
    { stems: 1, bars: 1, curves: 1 },
  ],
  [
    'sc in front loop',
    'short arc under its foot, open downward',
    'from memory',
    stitch('singleCrochet', 1, 'plain', 1),
    { stems: 1, bars: 1, curves: 1 },
  ],
  [
    'FPdc',
    'T with one slash whose foot ends in a hook',
    'seen',
    stitch('doubleCrochet', 2.4, 'frontPost'),
    { stems: 1, bars: 1, slashes: 1, curves: 1 },
  ],
  [
    'BPdc',
    'the same with the hook curling the other way',
    'seen',
    stitch('doubleCrochet', 2.4, 'backPost'),
    { stems: 1, bars: 1, slashes: 1, curves: 1 },
  ],
  [
    'FPsc',
    'cross with a hook at the foot, here on a stem',
    'from memory',
    stitch('singleCrochet', 1.2, 'frontPost'),
    { bars: 1, stems: 2, curves: 1 },
  ],
  [
    'BPsc',
    'cross with the mirrored hook, here on a stem',
    'from memory',
    stitch('singleCrochet', 1.2, 'backPost'),
    { bars: 1, stems: 2, curves: 1 },
  ],
  [
    'FPtr',
    'T with two slashes and hooked foot',
    'from memory',
    stitch('treble', 3.2, 'frontPost'),
    { stems: 1, bars: 1, slashes: 2, curves: 1 },
  ],
  [
    'BPtr',
    'T with two slashes and mirrored hook',
    'from memory',
    stitch('treble', 3.2, 'backPost'),
    { stems: 1, bars: 1, slashes: 2, curves: 1 },
  ],
  [
    'sc2tog',
    'two legs meeting in one head, with the cross bar near the top',
    'from memory',
    closed('singleCrochet', 2, 1),
    { stems: 2, bars: 1 },
  ],
  [
    'sc3tog',
    'three legs meeting in one head with the cross bar',
    'from memory',
    closed('singleCrochet', 3, 1),
    { stems: 3, bars: 1 },
  ],
  [
    'hdc2tog',
    'two stems without slashes meeting under one bar',
    'from memory',
    closed('halfDoubleCrochet', 2, 1.6),
    { stems: 2, bars: 1 },
  ],
  [
    'dc2tog',
    'two stems, one slash each, meeting under one short bar',
    'from memory',
    closed('doubleCrochet', 2, 2.4),
    { stems: 2, bars: 1, slashes: 2 },
  ],
  [
    'dc3tog',
    'three stems, one slash each, meeting under one short bar',
    'from memory',
    closed('doubleCrochet', 3, 2.4),
    { stems: 3, bars: 1, slashes: 3 },
  ],
  [
    'cluster',
    'several slashed stems closed under one bar',
    'from memory',
    group('cluster', 'doubleCrochet', 3),
    { curves: 3, bars: 1, slashes: 3 },
  ],
  [
    'bobble',
    'several slashed stems from one foot point, closed under one bar at the top',
    'from memory',
    group('bobble', 'doubleCrochet', 5),
    { curves: 5, bars: 1, slashes: 5 },
  ],
  [
    'puff',
    'several stems without slashes from one foot point, closed at the top',
    'from memory',
    group('puff', 'halfDoubleCrochet', 3),
    { curves: 3 },
  ],
  [
    'popcorn',
    'several slashed stems from one foot point, the tops gathered under a small oval',
    'seen',
    group('popcorn', 'doubleCrochet', 5),
    { curves: 5, slashes: 5, ovals: 1 },
  ],
  [
    'picot',
    'three or more small ovals in a loop closed by a dot',
    'from memory',
    symbols.drawPicot(stage, foot, head(1), 3),
    { ovals: 3, dots: 1 },
  ],
  [
    'ch-5 picot',
    'variant of the same',
    'from memory',
    symbols.drawPicot(stage, foot, head(1), 5),
    { ovals: 5, dots: 1 },
  ],
  [
    'foundation sc',
    'cross standing on its own oval',
    'from memory',
    stitch('singleCrochet', 1.6, 'foundation'),
    { stems: 1, bars: 1, ovals: 1 },
  ],
  [
    'esc',
    'cross with one slash on a lengthened stem',
    'from memory',
    stitch('singleCrochet', 1.6, 'extended'),
    { bars: 1, stems: 2, slashes: 1 },
  ],
  ['adjustable ring', 'plain circle or coil', 'from memory', symbols.drawRing(stage, foot, 0.7, 0), { ovals: 1 }],
  ['ring of chains', 'ovals in a circle', 'seen', symbols.drawRing(stage, foot, 0.7, 6), { ovals: 6 }],
]

describe('symbols are what the published descriptions say', () => {
  it.each(published)('%s: %s (%s)', (_, __, ___, lines, expected) => {
    expect(found(lines)).toEqual({ ...none, ...expected })
  })
})

/** Where the belly of the only curve lies, beside its ends. */
function belly(lines: readonly Line[]): Point {
  const [from = foot, first = foot, , to = foot] = pointsOf(lines.find(isCurve)?.path ?? '')
  return { x: to.x - from.x, y: first.y - (from.y + to.y) / 2 }
}

describe('what tells front from back', () => {
  it('is the side on which the hook of a post stitch curls: right for the front, left for the back', () => {
    expect(belly(stitch('doubleCrochet', 2.4, 'frontPost')).x).toBeGreaterThan(0.2)
    expect(belly(stitch('doubleCrochet', 2.4, 'backPost')).x).toBeLessThan(-0.2)
  })

  it('is where the arc under the foot is open: up for the back loop, down for the front loop', () => {
    expect(belly(stitch('singleCrochet', 1, 'plain', 2)).y).toBeLessThan(-0.1)
    expect(belly(stitch('singleCrochet', 1, 'plain', 1)).y).toBeGreaterThan(0.1)
  })
})

const foundation = 'Foundation: Ch 10.\nRow 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (9 sc)\n'

describe('rules of construction', () => {
  it('height: symbols grow with the stitch: sc 1, hdc 2, dc 3, tr 4, dtr 5 chains (seen)', () => {
    const names = ['hdc', 'dc', 'tr', 'dtr']
    const chart = flatChart(
      `${foundation}Row 2: Ch 2 (counts as hdc), ${names.map((name) => `${name} in next 2 sts`).join(', ')}, turn.`,
    )
    const heights = placesOf(chart, 1).flatMap(({ sign, head, feet }) =>
      sign.what === 'stitch' ? [head.y - (feet[0]?.y ?? 0)] : [],
    )
    const [hdc = 0, , dc = 0, , tr = 0, , dtr = 0] = heights
    expect([dc / hdc, tr / hdc, dtr / hdc].map((ratio) => Math.round(ratio * 100) / 100)).toEqual([1.5, 2, 2.5])
  })

  it('foot: feet that meet in one point share one stitch (seen): 2 dc in 1 st, V-st, shell', () => {
    const row =
      'Row 2: Ch 1, sc in first st, 2 dc in next st, sk 1 st, (dc, ch 1, dc) in next st, sk 1 st, 5 dc in next st, sk 1 st, sc in next st, sc in last st, turn.'
    const stitches = placesOf(flatChart(foundation + row), 1).filter(({ sign }) => sign.what === 'stitch')
    const feet = stitches.map(({ feet }) => feet[0]?.x ?? 0)
    const sharing = [...new Set(feet)].map((x) => feet.filter((each) => each === x).length)
    expect(sharing).toEqual([1, 2, 2, 5, 1, 1])
  })

  it('head: heads that meet in one point are stitches closed together (seen)', () => {
    const [, , decrease] = placesOf(
      flatChart(`${foundation}Row 2: Ch 1, sc in first st, sc2tog, sc in each st across, turn.`),
      1,
    )
    expect(decrease?.feet).toHaveLength(2)
  })

  it('rounds: start at the centre and are read counter-clockwise (seen)', () => {
    const [first, second] = placesOf(roundChart('Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st around.'), 1)
    const cross = (first?.head.x ?? 0) * (second?.head.y ?? 0) - (first?.head.y ?? 0) * (second?.head.x ?? 0)
    expect(cross).toBeGreaterThan(0)
  })
})
