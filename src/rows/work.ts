import { forSize } from './count.ts'
import { chainRow, joinedRow, ringRow, rotated, turned } from './fabric.ts'
import { habitKey } from './habits.ts'
import type { Step, StepOf, Target, Where } from './step.ts'
import { nowhere, target } from './work/extent.ts'
import { skipFoundation, skipsFoundation } from './work/first-skip.ts'
import { startFromHook } from './work/from-hook.ts'
import { beginOn, turnToLoop } from './work/lay.ts'
import { alone, makeSpace } from './work/make.ts'
import { hangMarker } from './work/marker.ts'
import { settleOpening } from './work/opening.ts'
import { advance, skipTarget } from './work/place.ts'
import { workRepeat, workRepeatAll } from './work/repeat.ts'
import { workEvenly, workLayers, workPickUp } from './work/shaping.ts'
import { workSlip } from './work/slip.ts'
import { workSource } from './work/source.ts'
import type { Stop, Work } from './work/state.ts'
import { mostSteps, mostStitches } from './work/state.ts'
import { workStitches, workTogether } from './work/stitching.ts'
import { workSweep } from './work/sweep.ts'
import { add, besidesKey } from './work/tally.ts'
import { goTo } from './work/where.ts'

type Worker<K extends Step['kind']> = (work: Work, step: StepOf<K>) => Stop | null

function workChain(work: Work, step: StepOf<'chain'>): Stop | null {
  const chains = forSize(step.count, work.size)
  if (chains < 0) return { why: 'below zero', at: step.at, number: chains }
  if (chains > mostStitches) return { why: 'too many', at: step.at, most: mostStitches }
  if (chains === 0) return null
  if (work.bridges && work.below !== null && (chains > 1 || work.made.places.length > 0)) {
    work.bridge += chains
    return null
  }
  if (work.made.places.length === 0 && work.opening === null) {
    // A single chain is none that a piece is begun on.
    if (work.below === null && chains > 1) {
      const laid = chainRow(work.kinds, chains, work.order)
      beginOn(work, laid)
      add(work.inside, besidesKey('chain'), chains)
      // The hook stands at the chain made last.
      setBelow(work, turned(laid, false))
      return null
    }
    if (work.loops > 0 && step.counting === null && chains > 1) return makeSpace(work, chains, alone, step.at)
    // Asked before it is settled whether the chain counts: the likelier of the two to be taken otherwise.
    if (work.skipsAfterChain) work.countsFirst = work.choose('first skip', 2) === 1
    work.opening = { at: step.at, chains, counting: step.counting }
    return null
  }
  return settleOpening(work) ?? makeSpace(work, chains, alone, step.at)
}

function setBelow(work: Work, row: NonNullable<Work['below']>): void {
  work.below = row
  work.end = row.places.length
  work.cursor = 0
  work.last = -1
  work.sub = 0
}

/** The first join of a foundation makes the ring; a later one ends the round. */
function workJoin(work: Work): Stop | null {
  if (work.made.places.length === 0 && work.below?.foundation === true && work.opening === null) {
    setBelow(work, joinedRow(work.below))
    return null
  }
  if (work.made.places.length > 0 || work.opening !== null) work.joined = true
  return settleOpening(work)
}

/** `ch 4, sl st in first ch`: the far end of a foundation that nothing has been worked into. */
function closesFoundation({ below, made, opening, cursor, size }: Work, { where }: StepOf<'slip'>): boolean {
  if (below?.foundation !== true || below.circular || made.places.length > 0 || opening !== null || cursor > 0)
    return false
  if (where.kind === 'fromHook') {
    const nth = forSize(where.nth, size)
    return nth === below.places.length || (nth === 1 && !where.said)
  }
  return where.kind === 'first' && forSize(where.count, size) === 1
}

function workRing(work: Work, step: StepOf<'ring'>): Stop | null {
  if (step.all === true) work.intoRing = true
  if (work.below?.ring === true) return null
  if (work.below?.foundation === true && work.made.places.length === 0) setBelow(work, joinedRow(work.below))
  else if (work.below === null) setBelow(work, ringRow)
  return null
}

function workTurn(work: Work, step: StepOf<'turn'>): Stop | null {
  if (work.made.places.length > 0) {
    work.turnSaid = step.turns
    return null
  }
  // `ch 1, turn, sc in each st`: flat rows have been turned already, a round has not.
  if (step.turns && work.below?.circular === true && !work.turnedBefore && work.cursor === 0) {
    setBelow(work, turned(work.below, work.joinedBelow))
    work.turnedBefore = true
  }
  return null
}

const spaceOrStitch: Target = [{ kind: 'stitch', said: false }]

/** An opening chain that counts stands on the first stitch: `sk first 2 sts` counts that one once more. */
function skipFirst(work: Work, where: Where & { kind: 'first' }, at: Step['at']): Stop | null {
  const more = where.count.map((count) => (count === null ? null : Math.max(0, count - 1)))
  return goTo(work, { ...where, kind: 'next', count: more }, at, () => null)
}

function workSkip(work: Work, step: StepOf<'skip'>): Stop | null {
  if (step.where.kind === 'fromHook') return startFromHook(work, step.where, step.at)
  const settled = settleOpening(work)
  if (settled !== null) return settled
  if (work.spoke > 0 && step.where.kind === 'next' && step.where.of.some((accept) => accept.kind === 'chain'))
    return goTo(work, step.where, step.at, () => null)
  work.spoke = 0
  const from = work.cursor
  const stop = skip(work, step)
  work.skipped = work.cursor
  if (work.cursor > from) {
    work.skippedFrom = from
    work.skippedTo = work.cursor
  }
  return stop
}

/** Only the space of the turning chain and its top are left: `miss 2` passes over the chains of the one. */
function leadsToTurn({ below, kinds, cursor, end }: Work): boolean {
  const kind = (at: number) => kinds.list[below?.places[at] ?? -1]
  const [space, top] = [kind(end - 2), kind(end - 1)]
  return (
    cursor === end - 2 && space?.what === 'space' && space.opening !== null && top?.what === 'stitch' && top.turning
  )
}

/** `2 dc in every ch; miss the tr`: the words before have passed over them already. */
function passedByName(work: Work, of: Target): boolean {
  const swept = work.swept >= 0 && work.swept === work.cursor
  return swept && of.every((accept) => accept.kind === 'named') && of !== work.lastTarget
}

/** Nothing but an opening chain that counts has been made. */
function standsOnFirst({ last, cursor, stitches, turningStitches }: Work): boolean {
  return last >= 0 && cursor === last + 1 && stitches > 0 && stitches === turningStitches
}

function skip(work: Work, step: StepOf<'skip'>): Stop | null {
  const { where, at } = step
  if (skipsFoundation(work, where)) return skipFoundation(work, step)
  if (where.kind === 'first' && work.last >= 0) return skipFirst(work, where, at)
  if (where.kind === 'next' && work.countsFirst && standsOnFirst(work)) {
    return skipFirst(work, { kind: 'first', count: where.count, of: where.of }, at)
  }
  // What lies before `skip last 3 sts` is not skipped by these words.
  if (where.kind === 'last') work.skipped = work.cursor
  if (where.kind !== 'next') return goTo(work, where, at, () => null)
  const of = skipTarget(target(work, where.of))
  const asked = forSize(where.count, work.size)
  if (asked < 0) return { why: 'below zero', at, number: asked }
  const beforeTurn = leadsToTurn(work)
  const skipped = advance(work, of, asked)
  if (beforeTurn && work.cursor === work.end) work.cursor -= 1
  if (skipped > 0) work.lastTarget = where.of === of ? of : spaceOrStitch
  if (skipped === asked || passedByName(work, of)) return null
  return (
    nowhere(work, of, at) ?? {
      why: 'too few',
      at,
      wanted: `${asked} ${asked === 1 ? 'stitch' : 'stitches'} to skip`,
      there: skipped,
    }
  )
}

/** Alternatives between which an author does not change from row to row. */
const habitual = new Set(['first skip', 'scope', 'list times'])

function workEither(work: Work, step: StepOf<'either'>): Stop | null {
  const { about, at } = step
  const key = habitual.has(about) ? habitKey(about, at.start) : `${about} ${at.start}`
  const option = step.options[work.choose(key, step.options.length)]
  return option === undefined ? null : run(work, option)
}

const workers = {
  chain: workChain,
  work: (work, step) => workStitches(work, step, run),
  sweep: (work, step) => workSweep(work, step, run),
  together: workTogether,
  skip: workSkip,
  slip: (work, step) => (closesFoundation(work, step) ? workJoin(work) : workSlip(work, step)),
  join: workJoin,
  ring: workRing,
  turn: workTurn,
  leave: (work, step) => {
    work.leaveSaid = true
    if (step.count !== undefined) work.leaveCount = forSize(step.count, work.size)
    return null
  },
  source: workSource,
  layers: workLayers,
  repeat: (work, step) => workRepeat(work, step, run),
  repeatAll: (work, step) => workRepeatAll(work, step, run),
  sequence: (work, step) => run(work, step.body),
  either: workEither,
  bySize: (work, step) => run(work, step.options[work.size] ?? []),
  evenly: workEvenly,
  pickUp: workPickUp,
  fastenOff: (work) => {
    work.fastened = true
    return null
  },
  marker: (work, step) => hangMarker(work, step.place),
  remark: () => null,
} satisfies { [K in Step['kind']]: Worker<K> }

function workStep(work: Work, step: Step): Stop | null {
  switch (step.kind) {
    case 'chain':
      return workers.chain(work, step)
    case 'work':
      return workers.work(work, step)
    case 'sweep':
      return workers.sweep(work, step)
    case 'together':
      return workers.together(work, step)
    case 'skip':
      return workers.skip(work, step)
    case 'slip':
      return workers.slip(work, step)
    case 'turn':
      return workers.turn(work, step)
    case 'repeat':
      return workers.repeat(work, step)
    case 'repeatAll':
      return workers.repeatAll(work, step)
    case 'sequence':
      return workers.sequence(work, step)
    case 'either':
      return workers.either(work, step)
    case 'bySize':
      return workers.bySize(work, step)
    case 'evenly':
      return workers.evenly(work, step)
    case 'pickUp':
      return workers.pickUp(work, step)
    case 'source':
      return workers.source(work, step)
    case 'marker':
      return workers.marker(work, step)
    case 'layers':
      return workers.layers(work, step)
    case 'ring':
      return workers.ring(work, step)
    case 'leave':
      return workers.leave(work, step)
    case 'join':
    case 'fastenOff':
    case 'remark':
      return workers[step.kind](work)
  }
}

const usesPlaces = new Set<Step['kind']>([
  'work',
  'sweep',
  'together',
  'skip',
  'evenly',
  'repeat',
  'repeatAll',
  'either',
])

/** Slip stitches have travelled to where the round begins: what they passed comes last. */
function beginRound(work: Work, step: Step): void {
  const travelled = work.slips > 0 && work.made.places.length === 0 && work.last > 0
  if (!travelled || work.passed > 0 || work.below?.circular !== true || work.below.foundation) return
  if (!(usesPlaces.has(step.kind) || step.kind === 'chain')) return
  const by = work.last
  work.below = rotated(work.below, by)
  work.passed = by
  work.cursor -= by
  work.last = 0
}

/** Works steps one after the other; the first that can't be worked stops the row. */
export function run(work: Work, steps: readonly Step[]): Stop | null {
  for (const step of steps) {
    work.steps += 1
    if (work.steps > mostSteps) return { why: 'too many', at: step.at, most: mostStitches }
    beginRound(work, step)
    if (work.traces && (step.kind === 'work' || step.kind === 'together')) turnToLoop(work, step.loop ?? 0)
    const stop = workStep(work, step)
    if (stop !== null) return stop
  }
  return null
}
