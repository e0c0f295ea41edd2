import { forSize } from '../count.ts'
import { habitKey } from '../habits.ts'
import type { Step, StepOf, Target, Times, Until } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'
import { stitchKey } from '../terms/stitch.ts'
import { bodyStarts } from './bare-repeat.ts'
import { copyPasses, looksNoFurther } from './copy.ts'
import { extentEnd, target } from './extent.ts'
import { countMeant, nextMeant } from './place.ts'
import type { Snapshot } from './snapshot.ts'
import { restore, snapshot } from './snapshot.ts'
import type { Stop, Work } from './state.ts'
import { mostSteps } from './state.ts'
import type { RunSteps } from './stitching.ts'
import { add } from './tally.ts'
import { turningPlace } from './turning.ts'

const anyPlace: Target = [{ kind: 'stitch', said: true }]

interface Loop {
  readonly at: Step['at']
  readonly body: readonly Step[]
  readonly stop: number | null
  readonly ending: readonly Step[] | null
  readonly endingAt?: number
}

function isPlain(target: Target | null): boolean {
  return target === null || target.every((accept) => accept.kind === 'stitch' || accept.kind === 'chain')
}

function isLack(stop: Stop): boolean {
  return stop.why === 'too few' || stop.why === 'no such place' || stop.why === 'repeat'
}

function stitchesFrom(work: Work, from: number, to: number): number {
  return countMeant(work, anyPlace, from, to)
}

/** Whether a place that is meant lies before `end`. */
function hasPlace(work: Work, target: Target, end: number): boolean {
  const next = nextMeant(work, target)
  return next >= 0 && next < end
}

/** A stop inside a repetition is told as the repetition not coming out. */
function doesNotComeOut(loop: Loop, inner: Stop, done: number, asked: number | null, rest: number, uses: number): Stop {
  if (inner.why !== 'too few' && inner.why !== 'no such place') return inner
  return { why: 'repeat', at: loop.at, done, asked, left: rest, uses }
}

/** The last pass: cut at the stop mark, or with other words in place of its last step. */
function lastBody(loop: Loop): readonly Step[] {
  if (loop.stop !== null) return loop.body.slice(0, loop.stop)
  return loop.ending === null ? loop.body : [...loop.body.slice(0, loop.endingAt ?? -1), ...loop.ending]
}

/** The body `times` times in all. */
function exactly(work: Work, loop: Loop, times: number, run: RunSteps): Stop | null {
  if (times < 0) return { why: 'below zero', at: loop.at, number: times }
  const start = work.cursor
  let first = start
  for (let done = 0; done < times; done += 1) {
    const from = work.cursor
    work.passStart = from
    const before = looksNoFurther(loop.body) ? snapshot(work) : null
    const stop = run(work, done === times - 1 ? lastBody(loop) : loop.body)
    if (done === 0) first = work.cursor
    if (stop === null) {
      if (before !== null) done += copyPasses(work, loop.body, before, times - done - 2)
      continue
    }
    // One pass that does not fit by itself is not the fault of the number of repeats.
    if (done === 0) return stop
    const rest = stitchesFrom(work, from, work.end)
    const uses = stitchesFrom(work, start, first)
    return doesNotComeOut(loop, stop, done, times, rest, uses)
  }
  return null
}

/** No further pass fits: why not, where that was tried. */
interface Full {
  readonly lacks: Stop | null
}

/** One pass of a repetition to the end: done, ended at its stop mark, not fitting any more, or a stop. */
type Pass = 'done' | 'cut' | Full | Stop

function isFull(pass: Full | Stop): pass is Full {
  return 'lacks' in pass
}

/** Whether nothing that the repeat goes into is left. */
function isExhausted(work: Work): boolean {
  if (!hasPlace(work, anyPlace, work.end)) return true
  return work.lastTarget !== null && !isPlain(work.lastTarget) && !hasPlace(work, work.lastTarget, work.end)
}

/** Whether the first place that a pass names is ahead once more. */
function canBegin(work: Work, body: readonly Step[]): boolean {
  const first = body.find((step) => 'where' in step)
  const of = first !== undefined && 'where' in first && 'of' in first.where ? first.where.of : null
  return of !== null && hasPlace(work, target(work, of), work.end)
}

/** Whether the last pass goes into the turning chain alone, which is still ahead: `*ch 1, sc in next ch-1 sp`. */
function endsBeyond(work: Work, { body, ending }: Loop): boolean {
  const [last] = ending ?? []
  if (last === undefined || !('where' in last) || last.where.kind !== 'turningChain') return false
  const single = body.findIndex((step) => 'where' in step) === body.length - 1
  return single && turningPlace(work, last.where.space) >= work.cursor
}

function onePass(work: Work, loop: Loop, before: Snapshot, first: boolean, run: RunSteps): Pass {
  work.passStart = work.cursor
  const head = loop.stop === null ? loop.body : loop.body.slice(0, loop.stop)
  const stopped = run(work, head)
  if (
    loop.ending !== null &&
    (stopped !== null ? isLack(stopped) : isExhausted(work) && !canBegin(work, loop.body) && !endsBeyond(work, loop))
  )
    return lastPass(work, loop, before, run)
  // Of a place that is nowhere, none of the passes can be worked.
  if (stopped?.why === 'no such place' && first) return stopped
  if (stopped !== null) return fails(work, stopped, before)
  if (loop.stop === null) return 'done'
  if (isExhausted(work)) return 'cut'
  const cut = snapshot(work)
  const rest = run(work, loop.body.slice(loop.stop))
  return rest === null ? 'done' : fails(work, rest, cut)
}

function lastPass(work: Work, loop: Loop, before: Snapshot, run: RunSteps): Pass {
  restore(work, before)
  const stop = run(work, lastBody(loop))
  return stop === null ? { lacks: null } : fails(work, stop, before)
}

function fails(work: Work, stop: Stop, before: Snapshot): Pass {
  if (!isLack(stop)) return stop
  restore(work, before)
  return { lacks: stop }
}

/** Whole passes while one fits; what is left is for the words that follow, or told at the end of the row. */
function toEnd(work: Work, loop: Loop, run: RunSteps): Stop | null {
  const snapshots: Snapshot[] = []
  const start = work.cursor
  let first = start
  let done = 0
  for (;;) {
    const { cursor, sub, below } = work
    const before = snapshot(work)
    const pass = onePass(work, loop, before, done === 0, run)
    if (pass === 'cut') break
    if (pass !== 'done') {
      if (!isFull(pass)) return pass
      // What is written has to be worked once at least.
      if (done === 0 && pass.lacks !== null && hasPlace(work, anyPlace, work.end)) return pass.lacks
      endAtMark(work, loop, snapshots.at(-1), run)
      break
    }
    // A round that has been turned to begin further on has gone on, wherever it stands.
    const stays = work.cursor === cursor && work.sub === sub && work.below === below
    if (stays && done > 0 && isExhausted(work)) {
      restore(work, before)
      break
    }
    if (stays) return { why: 'goes nowhere', at: loop.at }
    if (done === 0) first = work.cursor
    done += 1
    snapshots.push(before)
    if (snapshots.length > 2) snapshots.shift()
    if (loop.stop === null && loop.ending === null) done += copyPasses(work, loop.body, before, mostSteps)
  }
  giveBack(work, loop, snapshots)
  const { unsaid: passed, cursor } = work
  work.endless = { at: loop.at, done, uses: stitchesFrom(work, start, first), passed, cursor }
  return null
}

/** `ending last rep at **`: where the last pass went past the mark, what it used beyond is left over. */
function endAtMark(work: Work, loop: Loop, last: Snapshot | undefined, run: RunSteps): void {
  if (loop.stop === null || last === undefined || hasPlace(work, anyPlace, work.end)) return
  restore(work, last)
  run(work, loop.body.slice(0, loop.stop))
}

/** The words after the repeat may need what its last passes used. */
function giveBack(work: Work, loop: Loop, snapshots: readonly Snapshot[]): void {
  if (snapshots.length === 0 || loop.ending !== null) return
  const fewer = work.choose(`fewer ${loop.at.start}`, snapshots.length + 1)
  const back = fewer === 0 ? undefined : snapshots[snapshots.length - fewer]
  if (back !== undefined) restore(work, back)
}

/** Passes up to a place: it has to be met exactly. */
function upTo(work: Work, loop: Loop, until: Until, run: RunSteps): Stop | null {
  const end = extentEnd(work, until, loop.at)
  if (typeof end !== 'number') return end
  const outer = work.end
  work.end = end
  const stop = passesUpTo(work, loop, end, run)
  work.end = outer
  return stop
}

/** Places of a kind that steps name. */
function placesNamed(steps: readonly Step[]): readonly Target[] {
  const found = steps.flatMap((step) => {
    if (step.kind === 'sequence' || step.kind === 'repeat') return placesNamed(step.body)
    return 'where' in step && 'of' in step.where ? [step.where.of] : []
  })
  return found.filter((of) => of.every((accept) => accept.kind !== 'stitch' && accept.kind !== 'chain'))
}

/** A body that goes into spaces is done when no space is left, whatever stitches lie between; so with stitches by name. */
function lacksAPlace(work: Work, body: readonly Step[], end: number): boolean {
  return placesNamed(body).some((of) => !hasPlace(work, target(work, of), end))
}

function passesUpTo(work: Work, loop: Loop, end: number, run: RunSteps): Stop | null {
  const start = work.cursor
  let first = start
  let done = 0
  for (; hasPlace(work, anyPlace, end); done += 1) {
    const from = work.cursor
    work.passStart = from
    const { sub } = work
    const before = snapshot(work)
    const stop = run(work, loop.body)
    if (done === 0) first = work.cursor
    if (stop !== null && isLack(stop) && done > 0) {
      restore(work, before)
      if (lacksAPlace(work, loop.body, end)) return noted(work, done)
    }
    // One pass that does not fit by itself is not the fault of how often it is worked; within another repeat it may be.
    if (stop !== null && done === 0 && work.loops < 2) return stop
    if (stop !== null) {
      const uses = done === 0 ? 0 : stitchesFrom(work, start, first)
      const rest = stitchesFrom(work, from, end)
      return doesNotComeOut(loop, stop, done, null, rest, uses)
    }
    if (work.cursor === from && work.sub === sub) return { why: 'goes nowhere', at: loop.at }
    done += copyPasses(work, loop.body, before, mostSteps)
  }
  return noted(work, done)
}

function times(work: Work, step: StepOf<'repeat'>): number | null {
  const said = step.times
  switch (said.kind) {
    case 'exactly':
      return forSize(said.count, work.size)
    case 'more':
      return forSize(said.count, work.size) + 1
    case 'said':
      return forSize(said.count, work.size) + (work.choose(habitKey('times', step.at.start), 2) === 0 ? 1 : 0)
    case 'until':
    case 'made':
      return null
  }
}

/** Stitches that the row has so far: of one kind, or of any. */
function madeSoFar({ tally, stitches }: Work, stitch: Stitch | null): number {
  return stitch === null ? stitches : (tally.counts.get(stitchKey(stitch)) ?? 0)
}

type Made = Extract<Times, { readonly kind: 'made' }>

/** Passes until the row has so many stitches. */
function untilMade(work: Work, loop: Loop, { count, stitch }: Made, run: RunSteps): Stop | null {
  const wanted = forSize(count, work.size)
  let done = 0
  for (let made = -1; madeSoFar(work, stitch) < wanted; done += 1) {
    if (madeSoFar(work, stitch) === made || done > mostSteps) return { why: 'goes nowhere', at: loop.at }
    made = madeSoFar(work, stitch)
    const stop = run(work, loop.body)
    if (stop !== null) return stop
  }
  return noted(work, done)
}

export function workRepeat(work: Work, step: StepOf<'repeat'>, run: RunSteps): Stop | null {
  const { endless } = work
  work.loops += 1
  const stop = repeated(work, step, run)
  work.loops -= 1
  if (stop !== null) return stop
  return noted(work, times(work, step) ?? (work.endless === endless ? 0 : (work.endless?.done ?? 0)))
}

function noted(work: Work, passes: number): null {
  if (passes > 1) add(work.inside, `${passesKey}${passes}`, 1)
  return null
}

/** Under this and their number passes of a repeat are noted: what designers count as petals, points or scallops. */
export const passesKey = 'passes:'

/** Places that a pass skips before its first stitch. */
function skippedFirst(body: readonly Step[], size: number): number {
  const skip = body.find((step) => step.kind !== 'chain' && step.kind !== 'remark')
  return skip?.kind === 'skip' && skip.where.kind === 'next' ? forSize(skip.where.count, size) : 0
}

function repeated(work: Work, step: StepOf<'repeat'>, run: RunSteps): Stop | null {
  work.skipsFirst = skippedFirst(step.body, work.size)
  const count = times(work, step)
  if (count !== null) return exactly(work, step, Math.min(count, mostSteps), run)
  if (step.times.kind === 'made') return untilMade(work, step, step.times, run)
  const { until } = step.times.kind === 'until' ? step.times : { until: { kind: 'end' } as const }
  return until.kind === 'end' ? toEnd(work, step, run) : upTo(work, step, until, run)
}

/** `rep across` without a mark: the body starts after steps that are worked once; which, is found by what comes out. */
export function workRepeatAll(work: Work, step: StepOf<'repeatAll'>, run: RunSteps): Stop | null {
  const starts = bodyStarts(step.body, work.size)
  const start = starts[work.choose(`start ${step.at.start}`, starts.length)] ?? 0
  const lead = run(work, step.body.slice(0, start))
  if (lead !== null) return lead
  const { times: said, at } = step
  return run(work, [{ kind: 'repeat', at, body: step.body.slice(start), stop: null, ending: null, times: said }])
}
