import { cover } from '../diagnostic/index.ts'
import type { Count } from './count.ts'
import { everySize } from './count.ts'
import { isPlaceless } from './phrase/parts.ts'
import type { Interval, Part, Step, StepOf, Where } from './step.ts'
import { heightInChains } from './terms/stitch.ts'
import { stitchOfParts } from './work/from-hook.ts'

/*
 * Words that go with each place of a row in turn, though they are said once: chains before or between the stitches,
 * and what goes into the places that an `every other` passes over.
 */

type Works = StepOf<'work'>
type Each = Where & { readonly kind: 'each' }

function isEach(step: Step | undefined): step is Works & { readonly where: Each } {
  return step?.kind === 'work' && step.where.kind === 'each'
}

function inNext(step: Works & { readonly where: Each }, count: Count): Works {
  return { ...step, where: { kind: 'next', count, of: step.where.of } }
}

function skipNext(step: Works & { readonly where: Each }, count: Count): StepOf<'skip'> {
  return { kind: 'skip', where: { kind: 'next', count, of: step.where.of }, at: step.at }
}

function repeated(body: readonly Step[], step: Works & { readonly where: Each }, stop: number | null): Step {
  const { until } = step.where
  return { kind: 'repeat', body, stop, ending: null, times: { kind: 'until', until }, at: step.at }
}

function less(count: Count, by: number): Count {
  return count.map((value) => (value === null ? null : value - by))
}

function sizesOf({ parts }: Works): number {
  const [part] = parts
  return part === undefined || part.kind === 'picot' ? 1 : part.count.length
}

/** One pass of what is worked in each place, or in each one of an interval. */
function onePass(step: Works & { readonly where: Each }, interval: Interval | undefined): readonly Step[] {
  const one = inNext(step, everySize(1, sizesOf(step)))
  if (interval === undefined) return [one]
  const passed = skipNext(step, less(interval.every, 1))
  return interval.before.every((value) => value === 0) ? [one, passed] : [passed, one]
}

/** `5 tr in every alternate loop, 1 dc in the others`: what goes into the places between. */
function fillBetween(steps: Step[], from: number): void {
  const [some, others] = steps.slice(-2)
  if (steps.length - 2 < from || !isEach(some) || !isEach(others)) return
  const { interval } = some.where
  if (interval === undefined || others.where.interval !== undefined) return
  const one = inNext(some, everySize(1, sizesOf(some)))
  const rest = { ...inNext(others, less(interval.every, 1)), where: restOf(some.where, interval) }
  const first = interval.before.every((value) => value === 0)
  const loop = repeated(first ? [one, rest] : [rest, one], some, first ? 1 : null)
  steps.splice(-2, 2, loop, { ...others, where: { kind: 'each', of: some.where.of, until: some.where.until } })
}

function restOf({ of }: Each, { every }: Interval): Where {
  return { kind: 'next', count: less(every, 1), of }
}

/** Whether a chain of so many stands for a stitch before the first of these, not between them. */
function mayTurn({ count, counting, numberFirst }: StepOf<'chain'>, step: Works & { readonly where: Each }): boolean {
  if (counting !== null || numberFirst !== true) return true
  const stitch = stitchOfParts(step.parts)
  const height = stitch === null ? 3 : heightInChains[stitch.base]
  const intoSpaces = step.where.of.every((accept) => accept.kind === 'space')
  if (count.some((value) => value === null || value < 2 || value === height)) return step.where.interval === undefined
  return !(intoSpaces || height === 1 || step.where.interval !== undefined)
}

/** `4 ch, 1 dc in each loop`: a chain too long to turn with lies before each of them. */
function chainBeforeEach(steps: Step[], from: number): void {
  const [chain, step] = steps.slice(-2)
  if (steps.length - 2 < from || chain?.kind !== 'chain' || !isEach(step) || mayTurn(chain, step)) return
  const { interval } = step.where
  steps.splice(-2, 2, { ...repeated([chain, ...onePass(step, interval)], step, null), at: cover(chain.at, step.at) })
}

/** So many single stitches with chains between them, for one place. */
function alternate(part: Part, times: number, chain: Part, closes: boolean): readonly Part[] {
  const single = part.kind === 'picot' ? part : { ...part, count: part.count.map(() => 1) }
  return Array.from({ length: times }, (_, at) => (at > 0 || closes ? [chain, single] : [single])).flat()
}

function timesOf(part: Part | undefined, where: Where): number {
  const own = part === undefined || part.kind === 'picot' ? 1 : (part.count[0] ?? 1)
  return where.kind === 'next' && isPlaceless(where) ? own * (where.count[0] ?? 1) : own
}

const mostInOne = 200

/** `5 tr with 1 ch between in next st`, `12 tr in the ring, 1 ch between each` */
function inOnePlace(step: Works, chain: StepOf<'chain'>): Step | null {
  const [part, ...others] = step.parts
  const where = chain.between === 'places' || chain.between === undefined ? step.where : chain.between
  const times = timesOf(part, step.where)
  if (part === undefined || others.length > 0 || times < 2 || times > mostInOne) return null
  const parts = alternate(part, times, { kind: 'chain', count: chain.count }, where.kind === 'ring')
  return { kind: 'work', parts, where, at: cover(step.at, chain.at) }
}

function exactlyIn(step: Works, chain: StepOf<'chain'>): Step | null {
  if (step.where.kind !== 'next') return null
  const { count, of } = step.where
  const one = { ...step, where: { kind: 'next', count: count.map(() => 1), of } } as const
  const times = { kind: 'exactly', count } as const
  return { kind: 'repeat', body: [one, chain], stop: 1, ending: null, times, at: cover(step.at, chain.at) }
}

/** `1 dc in each loop, 4 ch between`: the chain follows each of them. */
function chainAfterEach(steps: Step[], from: number): void {
  const [step, chain] = steps.slice(-2)
  if (steps.length - 2 < from || chain?.kind !== 'chain' || chain.between === undefined || step?.kind !== 'work') return
  const { between, ...plain } = chain
  const single = between !== 'places' || /^(?:ring|same)$/.test(step.where.kind)
  const spread = single
    ? inOnePlace(step, chain)
    : isEach(step)
      ? repeated([...onePass(step, step.where.interval), plain], step, null)
      : exactlyIn(step, plain)
  if (spread !== null) steps.splice(-2, 2, spread)
}

type Gather = (steps: Step[], from: number) => void

/** Of a list that may go into one place or several, each reading by itself. */
function inEveryReading(steps: Step[], from: number, gather: Gather): void {
  const [first, second] = steps.slice(-2)
  if (steps.length - 2 < from || first === undefined || second === undefined) return
  if (first.kind !== 'either' && second.kind !== 'either') {
    gather(steps, from)
    return
  }
  const either = first.kind === 'either' ? first : second
  if (either.kind !== 'either' || either.about !== 'list') return
  const options = either.options.map((option) => {
    const own = either === first ? [...option, second] : [first, ...option]
    gather(own, 0)
    return own
  })
  const length = either.options.map((option) => option.length + 1)
  if (options.some((option, at) => option.length !== length[at])) {
    steps.splice(-2, 2, { ...either, options, at: cover(first.at, second.at) })
  }
}

/** Puts what goes with each place of the last step there. */
export function spread(steps: Step[], from: number): void {
  fillBetween(steps, from)
  inEveryReading(steps, from, chainBeforeEach)
  inEveryReading(steps, from, chainAfterEach)
}
