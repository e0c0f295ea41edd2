import { forSize } from '../count.ts'
import { goesByStitch } from '../row-words.ts'
import type { Step, Target } from '../step.ts'
import { heightInChains } from '../terms/stitch.ts'
import { countMeant } from './place.ts'
import type { Work } from './state.ts'

/** Stitches that the words leave, and those that are left. */
export interface Leaves {
  readonly said: number
  readonly left: number
}

/** `6 chain, turn, 1 dc in each of 5`: as many chains are left as the turn takes. */
function turnsUnsaid({ below, begunAt, cursor, rowStitch, endless }: Work, remaining: number): boolean {
  if (below?.foundation !== true || below.circular || begunAt > 0 || rowStitch === null || endless !== null)
    return false
  return remaining === heightInChains[rowStitch.base] && cursor > remaining
}

/** How many places a row leaves of what it went into last, without saying so. */
export function leftOver(work: Work): number {
  if (work.lastTarget === null) return 0
  const remaining = countMeant(work, work.lastTarget, work.cursor, work.end - work.passed)
  if (turnsUnsaid(work, remaining)) return work.unsaid
  // The chain that an oval begins in has its stitches already.
  if (work.around && remaining === 1) return work.unsaid
  // `* miss 2, 1 dc; repeat`: the round ends with what the next pass would skip.
  if (work.below?.circular === true && remaining > 0 && remaining === work.skipsFirst) return work.unsaid
  // `…, ch 3, join`: the last chains lie over the stitches that are left; of `…, ch 3, sk 3, join` over those that are skipped.
  const last = work.kinds.list[work.made.places.at(-1) ?? -1]
  const bridged = work.joined && work.skipped !== work.cursor && last?.what === 'space' && remaining <= last.chains
  if (bridged && goesByStitch(work.lastTarget)) return work.unsaid
  return remaining + elsewhere(work, work.lastTarget) + work.unsaid
}

const idle = new Set<Step['kind']>(['turn', 'remark', 'fastenOff', 'chain', 'marker'])

/** `sc in each st to last 6 sts, turn.`: the words themselves say where a flat row ends. */
export function endsShort(work: Work, steps: readonly Step[], left: number): boolean {
  if (left === 0 || work.below?.circular !== false) return false
  const last = steps.findLast((step) => !idle.has(step.kind))
  if (last?.kind !== 'work' || last.where.kind !== 'each' || last.where.until.kind !== 'leaving') return false
  return forSize(last.where.until.count, work.size) === left
}

/** Left on stretches that the row has turned away from. */
function elsewhere(work: Work, target: Target): number {
  return work.stretches.reduce((sum, { cursor, end }) => sum + countMeant(work, target, cursor, end), 0)
}

/** What the words say is left, and what is; null where both agree, or the words give no number. */
export function leavesOf({ leaveCount, below, cursor, end, kinds }: Work): Leaves | null {
  if (leaveCount === null || below === null) return null
  const rest = below.places.slice(cursor, end).map((place) => kinds.list[place])
  const left = rest.filter((kind) => kind?.what === 'stitch' || kind?.what === 'chain').length
  const spaces = rest.filter((kind) => kind?.what === 'space').length
  return left === leaveCount || left + spaces === leaveCount ? null : { said: leaveCount, left }
}
