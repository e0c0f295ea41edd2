import { forSize } from '../count.ts'
import type { Special, Step, StepOf, Target, Until, Where } from '../step.ts'
import { padded } from './lay.ts'
import { isSpread, openGroup } from './make.ts'
import type { Stop, Work } from './state.ts'
import type { RunSteps } from './stitching.ts'
import { add } from './tally.ts'

function spread(work: Work, special: Special, run: RunSteps): Stop | null {
  const { makes, name } = special
  if (makes === 'one stitch' || !('steps' in makes)) return null
  const from = work.made.places.length
  const before = new Map(work.tally.counts)
  const group = openGroup(work, name)
  const stop = run(work, makes.steps)
  padded(work.made).fill(group, from)
  for (const [key, count] of work.tally.counts) {
    const added = count - (before.get(key) ?? 0)
    if (added > 0) add(work.inside, key, added)
  }
  add(work.tally, `special:${name}`, 1)
  return stop
}

const unsaid: Target = [{ kind: 'stitch', said: false }]

/** `cables across`: a stitch over several places is repeated while it fits. */
function spreadOver({ parts, at }: StepOf<'work'>, until: Until): Step {
  const count = parts.flatMap((part) => (part.kind === 'picot' ? [] : part.count.map(() => 1)))
  const once: Step = { kind: 'work', parts, where: { kind: 'next', count, of: unsaid }, at }
  return { kind: 'repeat', body: [once], stop: null, ending: null, times: { kind: 'until', until }, at }
}

function spreadPlaces(work: Work, where: Where, run: () => Stop | null): Stop | null {
  const times = where.kind === 'next' ? forSize(where.count, work.size) : 1
  for (let made = 0; made < times; made += 1) {
    const stop = run()
    if (stop !== null) return stop
  }
  return null
}

/** A special stitch that goes over several places, worked there; any other is made in one place. */
export function overPlaces(work: Work, step: StepOf<'work'>, run: RunSteps): Stop | null | 'in one place' {
  const [first] = step.parts
  if (first?.kind !== 'special' || !isSpread(first.special)) return 'in one place'
  const { special } = first
  if (step.where.kind === 'each') return run(work, [spreadOver(step, step.where.until)])
  return spreadPlaces(work, step.where, () => spread(work, special, run))
}
