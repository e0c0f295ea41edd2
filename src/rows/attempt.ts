import type { Kinds, Row } from './fabric.ts'
import { stitchNumber, turned } from './fabric.ts'
import type { RowWords } from './row-words.ts'
import { wordsOf } from './row-words.ts'
import type { Step, StepOf } from './step.ts'
import type { Stitch } from './terms/stitch.ts'
import { stitchKey } from './terms/stitch.ts'
import { settleOpening } from './work/opening.ts'
import { countMeant } from './work/place.ts'
import type { Choose, OpeningRules, Resting, Stop, Work } from './work/state.ts'
import { add, createTally } from './work/tally.ts'
import { run } from './work.ts'

/** What lies on the hook's side before a row, for one size. */
export interface Fabric {
  readonly row: Row | null
  /** The row ended in a join: the next stands on its first stitch. */
  readonly joined: boolean
  /** The next row is worked from the other side. */
  readonly turns: boolean
  /** `ch 3, turn` at the end of a row belongs to the next. */
  readonly pending: StepOf<'chain'> | null
}

export const nothing: Fabric = { row: null, joined: false, turns: false, pending: null }

/** A row that has been worked for one size, as far as it went. */
export interface Worked {
  readonly stop: Stop | null
  readonly fabric: Fabric
  /** By stitch key, `space:2`, `special:shell`, `together:sc2tog`, `chain`. */
  readonly tally: ReadonlyMap<string, number>
  /** Of these, inside special stitches. */
  readonly inside: ReadonlyMap<string, number>
  readonly total: number
  readonly turningStitches: number
  readonly left: number
  readonly leftSaid: boolean
  /** A repeat to the end that left something over. */
  readonly endless: {
    readonly at: Step['at']
    readonly done: number
    readonly uses: number
  } | null
  readonly chosen: Work['chosen']
  /** What is left of the row below, to come back to; null when nothing is. */
  readonly rest: { readonly resumed: number | null; readonly resting: Resting } | null
}

/** What one size needs to work a row. */
export interface Job {
  readonly kinds: Kinds
  readonly size: number
  readonly steps: readonly Step[]
  readonly style: 'flat' | 'round' | null
  readonly fabric: Fabric
  readonly rules: OpeningRules
  readonly resting: ReadonlyMap<number, Resting>
}

function begin(job: Job, choose: Choose, words: RowWords): Work {
  const { fabric } = job
  const row = fabric.row === null ? null : fabric.turns ? turned(fabric.row, fabric.joined) : fabric.row
  return {
    kinds: job.kinds,
    size: job.size,
    choose,
    rules: job.rules,
    rowStitch: words.stitch,
    namesTurningChain: words.namesTurningChain,
    resting: job.resting,
    freedom: null,
    resumed: null,
    below: row,
    cursor: 0,
    sub: 0,
    end: row?.places.length ?? 0,
    last: -1,
    passed: 0,
    joinedBelow: fabric.joined,
    opening: null,
    made: { places: [], groups: [], names: [] },
    tally: createTally(),
    inside: createTally(),
    stitches: 0,
    slips: 0,
    turningStitches: 0,
    unsaid: 0,
    leaveSaid: false,
    joined: false,
    turnSaid: null,
    turnedBefore: fabric.turns,
    fastened: false,
    lastTarget: null,
    endless: null,
    steps: 0,
    loops: 0,
    chosen: new Map(),
  }
}

const slipStitch: Stitch = { base: 'slipStitch', style: 'plain' }

/** Slip stitches are travel, except in a row that has nothing else: there they are its stitches. */
function settleSlips(work: Work): void {
  if (work.slips === 0) return
  add(work.tally, stitchKey(slipStitch), work.slips)
  if (work.stitches > 0 || work.tally.counts.size > 1) return
  const number = stitchNumber(work.kinds, slipStitch)
  for (let made = 0; made < work.slips; made += 1) work.made.places.push(number)
  work.stitches = work.slips
}

function leftOver(work: Work): number {
  if (work.lastTarget === null) return 0
  const remaining = countMeant(work, work.lastTarget, work.cursor, work.end - work.passed)
  // `…, ch 3, join`: the last chains lie over the stitches that are left.
  const last = work.kinds.list[work.made.places.at(-1) ?? -1]
  if (work.joined && last?.what === 'space' && remaining <= last.chains) return work.unsaid
  return remaining + work.unsaid
}

function madeRow(work: Work, style: Job['style']): Row | null {
  const { made, below } = work
  if (made.places.length === 0) return below?.foundation === true ? below : null
  const circular = work.joined || style === 'round' || (style === null && below?.circular === true)
  return { ...made, circular, ring: false, foundation: false }
}

function fabricAfter(work: Work, job: Job, pending: Fabric['pending']): Fabric {
  const row = madeRow(work, job.style)
  if (row === null) return { ...job.fabric, row: work.below, pending }
  const joined = work.joined || (row.foundation && row.circular)
  return { row, joined, turns: row.circular ? work.turnSaid === true : work.turnSaid !== false, pending }
}

function restOf(work: Work): Worked['rest'] {
  if (work.below === null || !(work.leaveSaid || work.resumed !== null)) return null
  return { resumed: work.resumed, resting: { row: work.below, cursor: work.cursor } }
}

/** Works a row for one size. Never fails: what can't be worked is in `stop`. */
export function workFor(job: Job, choose: Choose): Worked {
  const words = wordsOf(job.steps)
  const { own, pending } = words
  const carried = job.fabric.pending
  const steps = carried === null || words.opensWithChain ? own : [carried, ...own]
  const work = begin(job, choose, words)
  const { below } = work
  const stop = run(work, steps) ?? settleOpening(work)
  settleSlips(work)
  const chains = below === null && work.made.places.length === 0 ? (work.below?.places.length ?? 0) : 0
  if (chains > 0) add(work.tally, 'chain', chains)
  const left = stop === null ? leftOver(work) : 0
  return {
    stop,
    fabric: fabricAfter(work, job, pending),
    tally: work.tally.counts,
    inside: work.inside.counts,
    total: work.stitches,
    turningStitches: work.turningStitches,
    left,
    leftSaid: work.leaveSaid,
    endless: work.endless,
    chosen: work.chosen,
    rest: restOf(work),
  }
}
