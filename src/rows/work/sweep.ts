import { everySize } from '../count.ts'
import type { Step, StepOf, Sweeping, Target } from '../step.ts'
import { extentEnd, target } from './extent.ts'
import { settleOpening } from './opening.ts'
import { nextMeant } from './place.ts'
import type { Stop, Work } from './state.ts'
import type { RunSteps } from './stitching.ts'

/** One of the kinds of place that are swept, with the next place of it. */
interface Kind {
  readonly steps: readonly Step[]
  readonly of: Target
  next: number
}

/** The work of one kind in the next place that it means. */
function inNext(work: Work, { at, parts, where }: Sweeping): Kind {
  const next = { kind: 'next', count: everySize(1, work.size + 1), of: where.of } as const
  return { steps: [{ kind: 'work', parts, where: next, at }], of: target(work, where.of), next: -1 }
}

/** The kind whose place comes next; undefined when none is left. A place is looked for once. */
function nearest(work: Work, kinds: readonly Kind[]): Kind | undefined {
  for (const kind of kinds) if (kind.next < work.cursor && kind.next < work.end) kind.next = placeOf(work, kind.of)
  return kinds.reduce<Kind | undefined>(
    (first, kind) => (kind.next < work.end && (first === undefined || kind.next < first.next) ? kind : first),
    undefined,
  )
}

function rank({ where }: Sweeping): number {
  return where.of.some((accept) => accept.kind === 'stitch' || accept.kind === 'named') ? 1 : 0
}

function placeOf(work: Work, of: Target): number {
  const next = nextMeant(work, of)
  return next < 0 ? work.end : next
}

/** Works each place by its kind, in the order in which the places come. */
export function workSweep(work: Work, step: StepOf<'sweep'>, run: RunSteps): Stop | null {
  const settled = settleOpening(work)
  const [last] = step.works.slice(-1)
  if (settled !== null || last === undefined) return settled
  const end = extentEnd(work, last.where.until, step.at)
  if (typeof end !== 'number') return end
  const outer = work.end
  work.end = end
  // A corner is a stitch too: what is told by its place comes first.
  const kinds = step.works.toSorted((a, b) => rank(a) - rank(b)).map((each) => inNext(work, each))
  let stop: Stop | null = null
  for (let kind = nearest(work, kinds); kind !== undefined && stop === null; kind = nearest(work, kinds)) {
    stop = run(work, kind.steps)
  }
  work.end = outer
  if (stop === null) work.cursor = Math.max(work.cursor, end)
  return stop
}
