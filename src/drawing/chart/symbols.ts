import type { LoopCode } from '../../rows/past.ts'
import type { BaseStitch, StitchStyle } from '../../rows/terms/stitch.ts'
import type { Line } from '../drawing.ts'
import type { Point } from '../path.ts'
import type { Stage, Stem } from './stage.ts'
import { bow, box, oval, stemFrom, stroke } from './stage.ts'

/**
 * The published chart symbols of the trade, drawn from foot to head wherever those lie (Craft Yarn Council, Crochet chart
 * symbols: an international set of Japanese origin). The shapes are this program's own.
 */

/** Strokes across the stem of a tall stitch: the yarn overs that come before the hook goes in, none for a half double. */
const slashes: Readonly<Record<BaseStitch, number>> = {
  slipStitch: 0,
  singleCrochet: 0,
  halfDoubleCrochet: 0,
  doubleCrochet: 1,
  treble: 2,
  doubleTreble: 3,
  tripleTreble: 4,
}

/** How a stitch is drawn: `legs` meet in its head, from as many feet as are given or all from one. */
export interface Look {
  readonly base: BaseStitch
  readonly style: StitchStyle
  /** The loop it goes into as the chart shows it, from the right side. */
  readonly loop: LoopCode
}

const half = 0.27
/** The stem stands clear of its foot and ends just under its head, so that symbols do not run into each other. */
const [clearFoot, clearHead] = [0.16, 0.06]

function slashesOn(stage: Stage, stem: Stem, count: number): readonly Line[] {
  const step = 0.26
  // Nearer to the head than to the foot: the legs of a fan meet in their foot.
  const middle = stem.length * 0.6
  return Array.from({ length: count }, (_, index) => {
    const along = middle + (index - (count - 1) / 2) * step
    return stroke(stage, stem.at(along - 0.11, -0.18), stem.at(along + 0.11, 0.18))
  })
}

/** A cross; on a longer way from foot to head it stands at the head, on a stem. */
function cross(stage: Stage, stem: Stem): readonly Line[] {
  const long = stem.length > 1.7
  const middle = stem.length - (long ? 0.5 : Math.max(0.4, stem.length / 2 - 0.06))
  const arms = [
    stroke(stage, stem.at(middle - half, 0), stem.at(middle + half, 0)),
    stroke(stage, stem.at(middle, -half), stem.at(middle, half)),
  ]
  return long ? [...arms, stroke(stage, stem.at(clearFoot, 0), stem.at(middle - half, 0))] : arms
}

function bar(stage: Stage, stem: Stem, width = half): Line {
  const top = stem.length - clearHead
  return stroke(stage, stem.at(top, -width), stem.at(top, width))
}

function upright(stage: Stage, stem: Stem, base: BaseStitch): readonly Line[] {
  if (base === 'slipStitch') return [oval(stage, stem.at(stem.length / 2, 0), { x: 1, y: 0 }, 0.17, 0.12, 'solid')]
  if (base === 'singleCrochet') return cross(stage, stem)
  return [
    stroke(stage, stem.at(clearFoot, 0), stem.at(stem.length - clearHead, 0)),
    bar(stage, stem),
    ...slashesOn(stage, stem, slashes[base]),
  ]
}

/** The foot of a stitch around a post: a hook that curls to the right for the front, to the left for the back. */
function hook(stage: Stage, stem: Stem, side: 1 | -1): Line {
  const [deep, wide] = [0.12, 0.3]
  return bow(
    stage,
    stem.at(clearFoot + 0.3, 0),
    stem.at(clearFoot - 0.2 - deep, 0),
    stem.at(clearFoot - 0.2 - deep, side * wide),
    stem.at(clearFoot + 0.12, side * wide),
  )
}

/** Under the foot an arc: open upwards for the back loop, downwards for the front loop. */
function loopArc(stage: Stage, stem: Stem, loop: 1 | 2): Line {
  const [end, belly] = loop === 2 ? [0.12, -0.12] : [-0.06, 0.18]
  return bow(stage, stem.at(end, -half), stem.at(belly, -half / 2), stem.at(belly, half / 2), stem.at(end, half))
}

/** A plain, post, extended or foundation stitch. */
export function drawStitch(stage: Stage, foot: Point, head: Point, { base, style, loop }: Look): readonly Line[] {
  const stem = stemFrom(foot, head)
  const lines = [...styled(stage, stem, base, style)]
  if (loop !== 0) lines.push(loopArc(stage, stem, loop))
  return lines
}

function styled(stage: Stage, stem: Stem, base: BaseStitch, style: StitchStyle): readonly Line[] {
  const { length, at } = stem
  switch (style) {
    case 'plain':
      return upright(stage, stem, base)
    case 'frontPost':
    case 'backPost':
      return [...posted(stage, stem, base), hook(stage, stem, style === 'frontPost' ? 1 : -1)]
    case 'foundation':
      return [
        ...upright(stage, stemFrom(at(0.45, 0), at(length, 0)), base),
        oval(stage, at(0.2, 0), direction(at(0, 0), at(0, 1)), 0.36, 0.2, 'symbol'),
      ]
    case 'extended':
      return [
        ...upright(stage, stem, base),
        stroke(stage, at(length * 0.25 - 0.1, -0.18), at(length * 0.25 + 0.1, 0.18)),
        ...(base === 'singleCrochet' ? [stroke(stage, at(clearFoot, 0), at(length / 2, 0))] : []),
      ]
  }
}

/** A single crochet has no stem to hook: it stands on one. */
function posted(stage: Stage, stem: Stem, base: BaseStitch): readonly Line[] {
  if (base !== 'singleCrochet') return upright(stage, stem, base)
  return [...cross(stage, stem), stroke(stage, stem.at(clearFoot + 0.3, 0), stem.at(stem.length / 2, 0))]
}

function direction(from: Point, to: Point): Point {
  return { x: to.x - from.x, y: to.y - from.y }
}

/** Stitches closed together: a leg from each foot, meeting under one bar; for single crochet the bar lies across the legs. */
export function drawClosed(stage: Stage, feet: readonly Point[], head: Point, base: BaseStitch): readonly Line[] {
  const legs = feet.map((foot) => stemFrom(foot, head))
  const single = base === 'singleCrochet'
  const lines = legs.flatMap((leg) => [
    stroke(stage, leg.at(clearFoot, 0), leg.at(leg.length - clearHead, 0)),
    ...slashesOn(stage, leg, slashes[base]),
  ])
  const middle = middleOf(feet)
  const stem = stemFrom(middle, head)
  const top = single ? stem.length * 0.68 : stem.length - clearHead
  return [...lines, stroke(stage, stem.at(top, -half), stem.at(top, half))]
}

function middleOf(points: readonly Point[]): Point {
  return {
    x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
    y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
  }
}

export type GroupName = 'cluster' | 'bobble' | 'puff' | 'popcorn'

/** Where the legs of a group swell and how it is closed. */
const groups: Readonly<
  Record<GroupName, { readonly swell: number; readonly slashed: boolean; readonly top: 'bar' | 'point' | 'oval' }>
> = {
  cluster: { swell: 0.52, slashed: true, top: 'bar' },
  bobble: { swell: 0.52, slashed: true, top: 'bar' },
  puff: { swell: 0.44, slashed: false, top: 'point' },
  popcorn: { swell: 0.54, slashed: true, top: 'oval' },
}

/** Several stitches from one foot that are one stitch at the top. */
export function drawGroup(
  stage: Stage,
  foot: Point,
  head: Point,
  { name, base, legs }: { readonly name: GroupName; readonly base: BaseStitch; readonly legs: number },
): readonly Line[] {
  const { swell, slashed, top } = groups[name]
  const stem = stemFrom(foot, head)
  const end = stem.length - clearHead - (top === 'oval' ? 0.14 : 0)
  const lines = Array.from({ length: legs }, (_, leg): readonly Line[] => {
    const side = legs === 1 ? 0 : (2 * leg) / (legs - 1) - 1
    const wide = swell * 1.33 * side
    const middle = stem.at((clearFoot + end) / 2, swell * side)
    const across = stemFrom(middle, stem.at((clearFoot + end) / 2 + 1, swell * side))
    const marks =
      slashed && base !== 'halfDoubleCrochet' ? [stroke(stage, across.at(-0.07, -0.13), across.at(0.07, 0.13))] : []
    const third = (end - clearFoot) / 3
    return [
      bow(stage, stem.at(clearFoot, 0), stem.at(clearFoot + third, wide), stem.at(end - third, wide), stem.at(end, 0)),
      ...marks,
    ]
  }).flat()
  if (top === 'bar') return [...lines, bar(stage, stem)]
  if (top === 'oval')
    return [
      ...lines,
      oval(stage, stem.at(end + 0.12, 0), direction(stem.at(0, 0), stem.at(0, 1)), 0.24, 0.12, 'symbol'),
    ]
  return lines
}

/** One chain, its long side along the way. */
export function drawChain(stage: Stage, middle: Point, along: Point): Line {
  return oval(stage, middle, along, 0.35, 0.19, 'symbol')
}

/** A small loop of chains on a foot, closed by a dot. */
export function drawPicot(stage: Stage, foot: Point, head: Point, chains: number): readonly Line[] {
  const stem = stemFrom(foot, head)
  const radius = Math.max(0.34, (chains * 0.5) / (2 * Math.PI) + 0.12)
  const centre = stem.at(0.12 + radius, 0)
  const ovals = Array.from({ length: chains }, (_, index) => {
    const angle = ((index + 1) / (chains + 1)) * 2 * Math.PI
    const at = stem.at(0.12 + radius - radius * Math.cos(angle), radius * Math.sin(angle))
    const outward = direction(centre, at)
    return oval(stage, at, { x: -outward.y, y: outward.x }, 0.25, 0.14, 'symbol')
  })
  return [...ovals, oval(stage, stem.at(0.1, 0), { x: 1, y: 0 }, 0.11, 0.11, 'solid')]
}

/** Of a stitch that has no published symbol: a box with its number, which the key explains. */
export function drawBox(stage: Stage, foot: Point, head: Point): readonly Line[] {
  const stem = stemFrom(foot, head)
  const [low, high] = [Math.max(clearFoot, stem.length / 2 - 0.45), Math.min(stem.length, stem.length / 2 + 0.45)]
  const corners = [stem.at(low, -0.42), stem.at(high, -0.42), stem.at(high, 0.42), stem.at(low, 0.42)]
  return [box(stage, corners), stroke(stage, stem.at(0.05, 0), stem.at(low, 0))]
}

/** A dot for a slip stitch. */
export function drawSlip(stage: Stage, at: Point): Line {
  return oval(stage, at, { x: 1, y: 0 }, 0.2, 0.13, 'solid')
}

/** The ring in the middle: of so many chains, or drawn together. */
export function drawRing(stage: Stage, middle: Point, radius: number, chains: number): readonly Line[] {
  if (chains === 0) return [oval(stage, middle, { x: 1, y: 0 }, radius - 0.12, radius - 0.12, 'symbol')]
  return Array.from({ length: chains }, (_, index) => {
    const angle = (2 * Math.PI * (index + 0.5)) / chains
    const at = { x: middle.x + (radius - 0.05) * Math.cos(angle), y: middle.y + (radius - 0.05) * Math.sin(angle) }
    return drawChain(stage, at, { x: -Math.sin(angle), y: Math.cos(angle) })
  })
}
