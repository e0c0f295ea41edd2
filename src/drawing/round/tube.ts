import { orderOf } from '../../rows/past.ts'
import { lastAlike, turnsOf } from '../flat/course.ts'
import { simplified, usualTolerance } from '../flat/simplified.ts'
import type { Point } from '../path.ts'
import { closed as closedPath, open } from '../path.ts'
import type { Density, Plan, Span } from '../plan.ts'
import type { Round } from './rounds.ts'
import { flatRounds } from './rounds.ts'

/** Which ends are the middle of a crown, and no open edge. */
export interface Closed {
  readonly first: boolean
  readonly last: boolean
}

/** How a tube ends, and whether it begins on stitches of another piece. */
export interface Ends {
  readonly closed: Closed
  readonly pickedUp: boolean
}

/**
 * A piece worked in rounds as it lies on a table, pressed flat: half of each round is in front. Across in stitches from
 * its middle line, along in rounds from the first.
 */
interface Tube {
  readonly rounds: readonly Round[]
  /** Rounds that lie flat around a closed beginning or end: the crown of a hat. 0 for an open edge. */
  readonly crown: { readonly first: number; readonly last: number }
  readonly closed: Closed
  /** Rounds that leave stitches of the round before unworked, as a yoke leaves those of its sleeves. */
  readonly steps: readonly number[]
}

/** A round that uses less than this part of the one before leaves the rest for another part. */
const usedShare = 0.9

function leavesSome({ row }: Round, before: Round): boolean {
  const { into, again } = row.trace()
  const used = new Set([...into, ...[...again.values()].flat()].filter((ref) => orderOf(ref) === before.row.order))
  return used.size < usedShare * before.row.row.places.length
}

/** Lace passes over spaces and stitches without leaving them: only a round that grows shorter leaves some. */
function stepsIn(rounds: readonly Round[]): readonly number[] {
  return rounds.flatMap((round, at) => {
    const before = rounds[at - 1]
    if (before === undefined || round.around >= before.around * usedShare) return []
    return leavesSome(round, before) ? [at] : []
  })
}

function tubeOf(rounds: readonly Round[], closed: Closed, { stitches, rows }: Density): Tube {
  const ratio = rows / stitches
  const crown = {
    first: closed.first ? flatRounds(rounds, ratio) : 0,
    last: closed.last ? flatRounds(rounds.toReversed(), ratio) : 0,
  }
  return { rounds, crown, closed, steps: stepsIn(rounds) }
}

/** A quarter of an ellipse from the middle line out to a round, as a crown lies when it is folded. */
function dome(half: number, rounds: number): readonly Point[] {
  const parts = 14
  return Array.from({ length: parts }, (_, part) => {
    const angle = (part / parts) * (Math.PI / 2)
    return { x: half * Math.sin(angle), y: rounds * (1 - Math.cos(angle)) }
  })
}

/** So many rounds of increases, with plain rounds between them, make a slope; fewer are corners. */
const fewestJumps = 3

/** An edge with few corners: what grows by many stitches in every so many rounds, as a yoke does, is a slope. */
function slope(points: readonly Point[]): readonly Point[] {
  const jumps = points
    .slice(1)
    .map(({ x }, at) => x - (points[at]?.x ?? 0))
    .filter((jump) => Math.abs(jump) > usualTolerance)
  const even = jumps.length >= fewestJumps && (jumps.every((jump) => jump > 0) || jumps.every((jump) => jump < 0))
  return simplified(points, even ? 1.05 * Math.max(...jumps.map(Math.abs)) : usualTolerance)
}

/** The right edge of a tube, from its first round to its last. */
function edgeOf({ rounds, crown, closed, steps }: Tube): readonly Point[] {
  const half = (at: number): number => (rounds[at]?.around ?? 0) / 4
  const count = rounds.length
  const from = crown.first
  const to = count - crown.last
  const stretches: Point[][] = [[]]
  const add = (x: number, y: number): void => {
    stretches.at(-1)?.push({ x, y })
  }
  if (from === 0) add(closed.first ? 0 : half(0), 0)
  else add(half(from - 1), from)
  for (let at = from; at < to; at += 1) {
    if (steps.includes(at)) {
      add(half(at - 1), at)
      stretches.push([{ x: half(at), y: at }])
    }
    add(half(at), at + 0.5)
  }
  if (to === count) add(closed.last ? 0 : half(count - 1), count)
  else add(half(to), to)
  const head = from === 0 ? [] : dome(half(from - 1), from)
  const foot = crown.last === 0 ? [] : dome(half(to), crown.last).map(({ x, y }) => ({ x, y: count - y }))
  return [...head, ...stretches.flatMap(slope), ...foot.toReversed()]
}

/** How deep the ellipse of an open edge is drawn, as a part of its width. */
const rimDepth = 0.07

/** Half of the ellipse of an open edge, from left to right, over (1) or under (-1) its line. */
function rim(half: number, y: number, over: 1 | -1): readonly Point[] {
  const parts = 24
  return Array.from({ length: parts + 1 }, (_, part) => {
    const angle = Math.PI * (1 - part / parts)
    return { x: half * Math.cos(angle), y: y + over * 2 * half * rimDepth * Math.sin(angle) }
  })
}

interface Outline {
  readonly edge: readonly Point[]
  /** The front of an open upper edge, within the outline. */
  readonly front: readonly Point[]
}

/** The outline in centimetres, upwards, clockwise from its lower left corner. */
function outlineOf(tube: Tube, density: Density, upward: boolean): Outline {
  const height = tube.rounds.length / density.rows
  const right = edgeOf(tube).map(({ x, y }) => ({
    x: x / density.stitches,
    y: upward ? y / density.rows : height - y / density.rows,
  }))
  // From the lower edge up.
  const side = upward ? right : right.toReversed()
  const left = side.map(({ x, y }) => ({ x: -x, y }))
  const [lower, upper] = [side[0], side.at(-1)]
  if (lower === undefined || upper === undefined) return { edge: [], front: [] }
  const top = upper.x > 0 ? rim(upper.x, upper.y, 1) : []
  const bottom = lower.x > 0 ? rim(lower.x, lower.y, -1).toReversed() : []
  return {
    edge: [...left, ...top, ...side.toReversed(), ...bottom],
    front: upper.x > 0 ? rim(upper.x, upper.y, -1) : [],
  }
}

/**
 * Whether its first round is drawn at the top: it begins in its middle, grows as a skirt or a yoke does, or narrows from
 * where it was picked up, as a sleeve does.
 */
function beginsAtTop({ rounds, closed }: Tube, pickedUp: boolean): boolean {
  if (closed.first !== closed.last) return closed.first
  const [first, last] = [rounds[0]?.around ?? 0, rounds.at(-1)?.around ?? 0]
  const widest = Math.max(...rounds.map(({ around }) => around))
  if (pickedUp && !closed.last && first > last * 1.05) return true
  return !closed.first && (last > first * 1.05 || widest > Math.max(first, last) * 1.05)
}

/** Less than this part of the length around is not told as a length of its own. */
const leastShare = 0.04

/** Rounds in which the length around is told: open edges, and between them the longest and shortest. */
function toldRounds({ rounds, closed, steps }: Tube): readonly number[] {
  const lengths = rounds.map(({ around }) => around)
  const slack = Math.max(2, Math.max(...lengths) * leastShare)
  const last = rounds.length - 1
  const edges = [...(closed.first ? [] : [0]), ...(closed.last ? [] : [last])]
  const known = new Set(edges.map((at) => lengths[at]))
  const cuts = [0, ...steps, rounds.length]
  const turns = cuts.slice(1).flatMap((end, index) => turnsOf(lengths, cuts[index] ?? 0, end, slack))
  const inner = turns.filter((at) => {
    if (at === 0 || (closed.last && at === last) || known.has(lengths[at])) return false
    known.add(lengths[at])
    return true
  })
  const all = [...new Set([...edges, ...inner])].sort((a, b) => a - b)
  return all.filter((at, index) => index === 0 || lengths[at] !== lengths[all[index - 1] ?? 0])
}

/** Where rounds lie; centimetres, upwards. */
interface Lying {
  readonly density: Density
  readonly upward: boolean
  /** Where a place so many rounds from the beginning lies. */
  readonly level: (rounds: number) => number
}

function aroundSpans(tube: Tube, { density, upward, level }: Lying): readonly Span[] {
  const told = toldRounds(tube)
  const lengths = tube.rounds.map(({ around }) => around)
  const last = lengths.length - 1
  return told.map((at, index): Span => {
    const count = lengths[at] ?? 0
    const half = count / 4 / density.stitches
    const across = { direction: 'across', from: -half, to: half, count, of: 'stitches', word: 'around' } as const
    if (told.length === 1) return { ...across, key: 'around', name: 'Around', side: 'below', at: 0 }
    if (at === 0 || at === last) {
      const upper = (at === 0) !== upward
      const name = `Around the ${upper ? 'upper' : 'lower'} edge`
      return {
        ...across,
        key: `edge ${at === 0}`,
        name,
        side: upper ? 'above' : 'below',
        at: level(at === 0 ? 0 : at + 1),
      }
    }
    const beside = lengths[told[index - 1] ?? told[index + 1] ?? 0] ?? 0
    const name = count > beside ? 'Around at the widest' : 'Around at the narrowest'
    return { ...across, key: `turn ${index}`, name, side: 'within', at: level(lastAlike(lengths, at) + 1) }
  })
}

/** Rounds between which a height is told: crowns end, and stitches are left, where one begins. */
function cutsOf({ rounds, crown, steps }: Tube): readonly number[] {
  const count = rounds.length
  const crowns = [crown.first, count - crown.last]
  const cuts = [...crowns, ...steps].filter((at) => at > 1 && at < count - 1)
  return [0, ...[...new Set(cuts)].sort((a, b) => a - b), count]
}

function heightSpans(tube: Tube, lying: Lying, edge: number): readonly Span[] {
  const { closed, rounds, crown } = tube
  const cuts = cutsOf(tube)
  const span = (key: string, name: string, side: 'left' | 'right', from: number, to: number): Span => {
    const ends = [lying.level(from), lying.level(to)].sort((a, b) => a - b)
    const [low = 0, high = 0] = ends
    return { key, name, direction: 'up', side, from: low, to: high, at: edge, count: to - from, of: 'rows' }
  }
  const whole = span(
    'height',
    closed.first !== closed.last ? 'From center to edge' : 'Height',
    'right',
    0,
    rounds.length,
  )
  if (cuts.length === 2) return [whole]
  const crowned = crown.first + crown.last > 1
  const parts = cuts.slice(1).map((to, index) => {
    const from = cuts[index] ?? 0
    const isCrown = (from === 0 && crown.first > 1) || (to === rounds.length && crown.last > 1)
    const name = isCrown ? 'Flat round, from its center' : crowned ? 'Side' : nameOfPart(index, cuts.length - 2)
    return span(`part ${index}`, name, 'left', from, to)
  })
  return [whole, ...parts]
}

function nameOfPart(index: number, last: number): string {
  if (index === 0) return 'First edge to shaping'
  return index === last ? 'Shaping to last edge' : 'Between shapings'
}

/** A piece in rounds that does not lie flat, with its lengths around and its heights. */
export function tubePlan(rounds: readonly Round[], { closed, pickedUp }: Ends, density: Density): Plan {
  const tube = tubeOf(rounds, closed, density)
  const upward = !beginsAtTop(tube, pickedUp)
  const height = rounds.length / density.rows
  const level = (at: number): number => (upward ? at / density.rows : height - at / density.rows)
  const { edge, front } = outlineOf(tube, density, upward)
  const [across, up] = [edge.map(({ x }) => x), edge.map(({ y }) => y)]
  const right = Math.max(...across)
  const lying = { density, upward, level }
  return {
    left: -right,
    right,
    bottom: Math.min(...up),
    top: Math.max(...up),
    spans: [...aroundSpans(tube, lying), ...heightSpans(tube, lying, right)],
    lines: ({ place }) => {
      const placed = (points: readonly Point[]): readonly Point[] => points.map(({ x, y }) => place(x, y))
      const shape = { look: 'shape', path: closedPath(placed(edge)) } as const
      return front.length === 0 ? [shape] : [shape, { look: 'thin', path: open(placed(front)) }]
    },
  }
}
