import type { Kinds, Row } from './fabric.ts'
import { refsOf, rotated, stitchNumber, turned } from './fabric.ts'
import type { Past, PlaceRef, Trace } from './past.ts'
import type { RowWords } from './row-words.ts'
import { wordsOf } from './row-words.ts'
import type { Step, StepOf } from './step.ts'
import type { Stitch } from './terms/stitch.ts'
import { stitchKey } from './terms/stitch.ts'
import type { Leaves } from './work/left-over.ts'
import { endsShort, leavesOf, leftOver } from './work/left-over.ts'
import { settleOpening } from './work/opening.ts'
import { fillOpen } from './work/shaping.ts'
import type { Choose, Finished, OpeningRules, Resting, Stop, Work } from './work/state.ts'
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
  /** The rows so far. */
  readonly past: Past | null
  /** The order of the next row in the fabric of the pattern. */
  readonly order: number
  /** The last loop was closed by a stitch at its middle. */
  readonly closedInLoop?: true
}

/** Before the first row of a piece. */
export function bareFabric(order: number): Fabric {
  return { row: null, joined: false, turns: false, pending: null, past: null, order }
}

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
  /** Of these, spaces. */
  readonly leftSpaces: number
  readonly leftSaid: boolean
  /** What the words say is left, and what is; null where both agree, or the words give no number. */
  readonly leaves: Leaves | null
  /** Some number is left to the eye, and was estimated. */
  readonly byEye: boolean
  /** A repeat to the end that left something over. */
  readonly endless: Work['endless']
  /** What the places of its rows are. */
  readonly kinds: Kinds
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
  /** The number of the row, null where its label has none. */
  readonly number: number | null
  /** What the row is said to come to; null where that is not said. */
  readonly statedTotal: number | null
  /** Pieces that the row may join. */
  readonly finished: readonly Finished[]
}

/** The row below as the hook meets it. */
function asMet({ turns, joined, closedInLoop }: Fabric, row: Row): Row {
  if (closedInLoop === true && !turns) return rotated(row, row.places.length - 1)
  return turns ? turned(row, joined) : row
}

function begin(job: Job, choose: Choose, words: RowWords, traces: boolean): Work {
  const { fabric } = job
  const row = fabric.row === null ? null : asMet(fabric, fabric.row)
  return {
    kinds: job.kinds,
    size: job.size,
    choose,
    rules: job.rules,
    style: job.style,
    rowStitch: words.stitch,
    leadsOn: words.leadsOn,
    makesSpaces: words.makesSpaces,
    namesTurningChain: words.namesTurningChain,
    stitchesNamed: words.stitchesNamed,
    spacesNamed: words.spacesNamed,
    alongEdges: words.alongEdges,
    goesDeep: words.goesDeep,
    deepIn: -1,
    resting: job.resting,
    freedom: null,
    resumed: null,
    finished: job.finished,
    bridges: words.bridges,
    bridge: 0,
    spoke: 0,
    stretch: 'here',
    stretches: [],
    below: row,
    cursor: 0,
    sub: 0,
    end: row?.places.length ?? 0,
    last: -1,
    passed: 0,
    joinedBelow: fabric.joined,
    opening: null,
    opened: 0,
    past: fabric.past,
    order: fabric.order,
    traces,
    into: [],
    loop: 0,
    made: { places: [], groups: [], names: [], bases: [], again: [], loops: [], picots: [] },
    tally: createTally(),
    inside: createTally(),
    stitches: 0,
    slips: 0,
    yarnJoined: false,
    statedTotal: job.statedTotal,
    leftOpen: null,
    byEye: false,
    begunAt: 0,
    marks: [],
    markPassed: -1,
    intoRing: false,
    around: false,
    slippedInto: [],
    slippedAfter: [],
    turningStitches: 0,
    skippedFrom: 0,
    skippedTo: 0,
    unsaid: 0,
    spacesPassed: 0,
    firstTaken: false,
    skipped: -1,
    leaveSaid: false,
    leaveCount: null,
    joined: false,
    closedInLoop: false,
    turnSaid: null,
    turnedBefore: fabric.turns,
    fastened: false,
    lastTarget: null,
    endless: null,
    steps: 0,
    skipsAfterChain: words.skipsAfterChain,
    countsFirst: false,
    skipsFirst: 0,
    swept: -1,
    passStart: 0,
    loops: 0,
  }
}

const slipStitch: Stitch = { base: 'slipStitch', style: 'plain' }

/** Slip stitches are travel, except in a row that has nothing else: there they are its stitches. */
function settleSlips(work: Work): void {
  if (work.slips === 0) return
  add(work.tally, stitchKey(slipStitch), work.slips)
  if (work.stitches > 0 || work.tally.counts.size > 1) return
  const number = stitchNumber(work.kinds, slipStitch)
  for (let made = 0; made < work.slips; made += 1) {
    work.made.places.push(number)
    work.made.bases.push(work.slippedInto[made] ?? -1)
  }
  work.stitches = work.slips
}

/** Markers that the row hangs; those of the row below stay where a row goes on stitch by stitch. */
function marksOf({ marks, made, below }: Work): readonly number[] {
  if (marks.length > 0) return marks.filter((at) => at < made.places.length)
  return below?.marks !== undefined && below.places.length === made.places.length ? below.marks : []
}

function madeRow(work: Work, style: Job['style']): Row | null {
  const { places, groups, names } = work.made
  const { below } = work
  if (places.length === 0) return below?.foundation === true ? below : null
  const { order } = work
  const refs = (): readonly PlaceRef[] => refsOf(order, places.length)
  const circular = work.joined || style === 'round' || (style === null && below?.circular === true)
  const row = { places, groups, names, refs, circular, ring: false, foundation: false }
  const marks = marksOf(work)
  return marks.length === 0 ? row : { ...row, marks }
}

/** What the places made go into, by the places' own names. */
function traceOf(work: Work): Trace {
  const { bases, again, loops } = work.made
  const places = work.below?.places ?? []
  const below = work.below?.refs() ?? []
  const refOf = (base: number): PlaceRef => (base < 0 ? -1 : (below[base] ?? -1))
  const further = new Map<number, PlaceRef[]>()
  for (const { made, base } of again) further.set(made, [...(further.get(made) ?? []), refOf(base)])
  const { made, opened, joined } = work
  return {
    below: { places, refs: below },
    into: bases.map(refOf),
    again: further,
    loops,
    opened,
    picots: made.picots,
    slips: slipsOf(work, refOf),
    joined,
  }
}

/** Slip stitches that are no places of the row; where it has some that are, it has no others. */
function slipsOf({ kinds, made, slippedInto, slippedAfter }: Work, refOf: (base: number) => PlaceRef): Trace['slips'] {
  if (made.places.includes(stitchNumber(kinds, slipStitch))) return []
  return slippedInto.map((base, index) => ({ into: refOf(base), after: slippedAfter[index] ?? 0 }))
}

/** The same row worked once more by the same reading, with what each stitch goes into written down. */
function traced(job: Job, choose: Choose): () => Trace {
  let found: Trace | null = null
  return () => {
    found ??= traceOf(worked(job, choose, true).work)
    return found
  }
}

function fabricAfter(work: Work, job: Job, choose: Choose, pending: Fabric['pending']): Fabric {
  const row = madeRow(work, job.style)
  const { past, order } = work
  if (row === null) return { ...job.fabric, row: work.below, pending, past, order }
  const joined = work.joined || (row.foundation && row.circular)
  const turns = row.circular ? work.turnSaid === true : work.turnSaid !== false
  if (row.foundation) {
    // As it was made: the row to come turns it.
    return { row: row.circular ? row : turned(row, false), joined, turns, pending, past, order }
  }
  const last = { order, number: job.number, row, trace: traced(job, choose) }
  const after = { row, joined, turns, pending, past: { last, before: past }, order: order + 1 }
  return work.closedInLoop && row.circular ? { ...after, closedInLoop: true } : after
}

function restOf(work: Work): Worked['rest'] {
  if (work.below === null || !(work.leaveSaid || work.resumed !== null)) return null
  return { resumed: work.resumed, resting: { row: work.below, cursor: work.cursor } }
}

/** The row worked to its end, or as far as it goes. */
function worked(job: Job, choose: Choose, traces: boolean): { readonly work: Work; readonly stop: Stop | null } {
  const words = wordsOf(job.steps)
  const carried = job.fabric.pending
  const steps = carried === null || words.opensWithChain ? words.own : [carried, ...words.own]
  const work = begin(job, choose, words, traces)
  const stop = run(work, steps) ?? settleOpening(work) ?? fillOpen(work)
  if (stop === null && endsShort(work, steps, leftOver(work))) work.leaveSaid = true
  settleSlips(work)
  return { work, stop }
}

/** Works a row for one size. Never fails: what can't be worked is in `stop`. */
export function workFor(job: Job, choose: Choose): Worked {
  const { work, stop } = worked(job, choose, false)
  const begun = job.fabric.row === null && work.made.places.length === 0
  const chains = begun ? (work.below?.places.length ?? 0) : 0
  if (chains > 0) add(work.tally, 'chain', chains)
  return {
    stop,
    fabric: fabricAfter(work, job, choose, wordsOf(job.steps).pending),
    tally: work.tally.counts,
    inside: work.inside.counts,
    total: work.stitches,
    turningStitches: work.turningStitches,
    left: stop === null ? leftOver(work) : 0,
    leftSpaces: stop === null ? work.spacesPassed : 0,
    leftSaid: work.leaveSaid,
    leaves: stop === null ? leavesOf(work) : null,
    byEye: work.byEye,
    endless: work.endless,
    kinds: work.kinds,
    rest: restOf(work),
  }
}
