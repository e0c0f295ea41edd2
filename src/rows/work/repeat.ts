import { forSize } from '../count.ts'
import type { Step, StepOf, Target, Until } from '../step.ts'
import { countMeant } from './place.ts'
import type { Stop, Work } from './state.ts'
import { mostSteps, restore, snapshot } from './state.ts'
import type { RunSteps } from './stitching.ts'
import { extentEnd } from './where.ts'

const anyPlace: Target = [{ kind: 'stitch', said: true }]

interface Loop {
  readonly at: Step['at']
  readonly body: readonly Step[]
  readonly stop: number | null
}

function isPlain(target: Target | null): boolean {
  return target === null || target.every((accept) => accept.kind === 'stitch' || accept.kind === 'chain')
}

function isLack(stop: Stop): boolean {
  return stop.why === 'too few' || stop.why === 'no such place' || stop.why === 'repeat'
}

function left(work: Work, end: number): number {
  return countMeant(work, anyPlace, work.cursor, end)
}

/** A stop inside a repetition is told as the repetition not coming out. */
function doesNotComeOut(
  loop: Loop,
  inner: Stop,
  done: number,
  asked: number | null,
  rest: number,
  uses: number,
  there: number,
): Stop {
  if (inner.why !== 'too few' && inner.why !== 'no such place') return inner
  return { why: 'repeat', at: loop.at, done, asked, left: rest, uses, there }
}

/** The body `times` times in all; the last time only up to the stop mark. */
function exactly(work: Work, loop: Loop, times: number, run: RunSteps): Stop | null {
  if (times < 0) return { why: 'below zero', at: loop.at, number: times }
  const start = left(work, work.end)
  let uses = 0
  for (let done = 0; done < times; done += 1) {
    const before = left(work, work.end)
    const last = done === times - 1 && loop.stop !== null
    const stop = run(work, last ? loop.body.slice(0, loop.stop ?? undefined) : loop.body)
    // One pass that does not fit by itself is not the fault of the number of repeats.
    if (stop !== null) return done === 0 ? stop : doesNotComeOut(loop, stop, done, times, before, uses, start)
    if (done === 0) uses = start - left(work, work.end)
  }
  return null
}

/** One pass of a repetition to the end: done, not fitting any more, or the end of it. */
type Pass = 'done' | 'full' | Stop

function onePass(work: Work, loop: Loop, run: RunSteps): Pass {
  const before = snapshot(work)
  const head = loop.stop === null ? loop.body : loop.body.slice(0, loop.stop)
  const stopped = run(work, head)
  if (stopped !== null) return fails(work, stopped, before)
  if (loop.stop === null) return 'done'
  if (left(work, work.end) === 0) return 'full'
  const cut = snapshot(work)
  const rest = run(work, loop.body.slice(loop.stop))
  if (rest === null) return 'done'
  return fails(work, rest, cut)
}

function fails(work: Work, stop: Stop, before: ReturnType<typeof snapshot>): Pass {
  if (!isLack(stop)) return stop
  restore(work, before)
  return 'full'
}

/** Whole passes while one fits; what is left is for the words that follow, or told at the end of the row. */
function toEnd(work: Work, loop: Loop, run: RunSteps): Stop | null {
  const snapshots: ReturnType<typeof snapshot>[] = []
  const first = left(work, work.end)
  let uses = 0
  let done = 0
  for (;;) {
    const { cursor, sub } = work
    const before = snapshot(work)
    const pass = onePass(work, loop, run)
    if (typeof pass !== 'string') return pass
    if (pass === 'full') break
    if (work.cursor === cursor && work.sub === sub) return { why: 'goes nowhere', at: loop.at }
    if (done === 0) uses = first - left(work, work.end)
    done += 1
    snapshots.push(before)
    if (snapshots.length > 2) snapshots.shift()
  }
  giveBack(work, loop, snapshots)
  work.endless = { at: loop.at, done, uses }
  return null
}

/** The words after the repeat may need what its last passes used. */
function giveBack(work: Work, loop: Loop, snapshots: readonly ReturnType<typeof snapshot>[]): void {
  if (snapshots.length === 0) return
  const fewer = work.choose(`fewer ${loop.at.start}`, snapshots.length + 1)
  const back = fewer === 0 ? undefined : snapshots[snapshots.length - fewer]
  if (back !== undefined) restore(work, back)
}

/** Passes up to a place: it has to be met exactly. */
function upTo(work: Work, loop: Loop, until: Until, run: RunSteps): Stop | null {
  const end = extentEnd(work, until, loop.at)
  if (typeof end !== 'number') return end
  const outer = work.end
  const start = left(work, end)
  work.end = end
  let done = 0
  let uses = 0
  let stop: Stop | null = null
  while (stop === null && work.cursor < end && (done === 0 || left(work, end) > 0)) {
    const before = left(work, end)
    if (before === 0) break
    const { cursor, sub } = work
    const byName = !isPlain(work.lastTarget)
    const taken = snapshot(work)
    const inner = run(work, loop.body)
    if (inner !== null && done > 0 && byName && isLack(inner)) {
      // A body that goes into spaces is done when no space is left, whatever stitches lie between.
      restore(work, taken)
      break
    }
    if (inner !== null) stop = doesNotComeOut(loop, inner, done, null, before, uses, start)
    else if (work.cursor === cursor && work.sub === sub) stop = { why: 'goes nowhere', at: loop.at }
    if (done === 0) uses = start - left(work, end)
    done += 1
  }
  work.end = outer
  return stop
}

function times(work: Work, step: StepOf<'repeat'>): number | null {
  const said = step.times
  switch (said.kind) {
    case 'exactly':
      return forSize(said.count, work.size)
    case 'more':
      return forSize(said.count, work.size) + 1
    case 'said':
      return forSize(said.count, work.size) + (work.choose(`times ${step.at.start}`, 2) === 0 ? 1 : 0)
    case 'until':
      return null
  }
}

export function workRepeat(work: Work, step: StepOf<'repeat'>, run: RunSteps): Stop | null {
  const count = times(work, step)
  if (count !== null) return exactly(work, step, Math.min(count, mostSteps), run)
  const { until } = step.times.kind === 'until' ? step.times : { until: { kind: 'end' } as const }
  return until.kind === 'end' ? toEnd(work, step, run) : upTo(work, step, until, run)
}

const leading = new Set<Step['kind']>(['chain', 'turn', 'remark', 'slip', 'join', 'ring'])

/** `rep across` without a mark: the body starts after steps that are worked once; which, is found by what comes out. */
export function workRepeatAll(work: Work, step: StepOf<'repeatAll'>, run: RunSteps): Stop | null {
  const first = step.body.findIndex((each) => !leading.has(each.kind))
  const starts = Math.max(1, step.body.length - Math.max(0, first))
  const start = Math.max(0, first) + work.choose(`start ${step.at.start}`, Math.min(starts, 8))
  const lead = run(work, step.body.slice(0, start))
  if (lead !== null) return lead
  const { times: said, at } = step
  return workRepeat(work, { kind: 'repeat', at, body: step.body.slice(start), stop: null, times: said }, run)
}
