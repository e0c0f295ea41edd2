import type { Fabric, Worked } from './attempt.ts'
import { workFor } from './attempt.ts'
import { everySize, printCount } from './count.ts'
import type { RowJob } from './readings.ts'
import { sizeJob } from './readings.ts'
import { resized } from './resize.ts'
import { isMet } from './stated/meaning.ts'
import type { Step, StepOf, Times } from './step.ts'

/** Rows worked to find a number that fits, for one finding and size: a bound, far above what a slip of the pen needs. */
const farthest = 60
const nearest = 6
/** Repeats of one row that are tried. */
const mostRepeats = 8

type Counted = Exclude<Times, { readonly kind: 'until' | 'made' }>
type CountedRepeat = StepOf<'repeat'> & { readonly times: Counted }

function isCounted(step: Step): step is CountedRepeat {
  return step.kind === 'repeat' && step.times.kind !== 'until' && step.times.kind !== 'made'
}

function inSize(job: RowJob, size: number, steps: readonly Step[], fabric: Fabric): Worked {
  return workFor(sizeJob(job, size, steps, fabric), () => 0)
}

function comesOut(worked: Worked): boolean {
  return worked.stop === null && (worked.left === 0 || worked.leftSaid)
}

/** Whether a row comes out for a size, its stated count among it. */
function fits(job: RowJob, size: number, steps: readonly Step[]): boolean {
  const fabric = job.fabrics[size]
  if (fabric === undefined) return false
  const worked = inSize(job, size, steps, fabric)
  if (!comesOut(worked)) return false
  return job.stated === null || !job.checked(size) || isMet(job.stated, worked, size)
}

/** The steps with another number of repeats. */
function withTimes(steps: readonly Step[], repeat: CountedRepeat, times: number): readonly Step[] {
  const kind = repeat.times.kind === 'exactly' ? 'exactly' : 'more'
  const count = everySize(times, repeat.times.count.length)
  return steps.map((step) => (step === repeat ? { ...repeat, times: { kind, count } } : step))
}

/** The number of repeats nearest to the written one with which the row comes out; null where none does. */
function timesFor(job: RowJob, size: number, repeat: CountedRepeat): number | null {
  const steps = job.steps[size] ?? null
  const written = repeat.times.count[size] ?? null
  if (steps === null || written === null) return null
  for (let by = 1; by <= nearest; by += 1) {
    for (const times of [written - by, written + by]) {
      if (times > 0 && fits(job, size, withTimes(steps, repeat, times))) return times
    }
  }
  return null
}

function inWords(repeat: CountedRepeat, count: readonly (number | null)[], names: readonly string[]): string {
  const more = repeat.times.kind === 'exactly' ? '' : 'more '
  const shown = printCount(count)
  const differs = shown.includes('(')
  const [first = '', ...others] = names
  return `Write ${shown} ${more}${shown === '1' ? 'time' : 'times'}${differs ? `, for ${first} (${others.join(', ')})` : ''}.`
}

function repeatsOf(job: RowJob, size: number): readonly CountedRepeat[] {
  return (job.steps[size] ?? []).filter(isCounted).slice(0, mostRepeats)
}

/** `Write 9 (11, 13) more times`: for the sizes that are wrong what fits, for the others what is written. */
function instead(
  job: RowJob,
  repeat: CountedRepeat,
  sizes: readonly number[],
  names: readonly string[],
): string | null {
  const found = new Map(sizes.map((size) => [size, timesFor(job, size, repeat)]))
  if ([...found.values()].includes(null)) return null
  return inWords(
    repeat,
    repeat.times.count.map((written, size) => found.get(size) ?? written),
    names,
  )
}

/** What to write for the repeat that stands at `at`; null where no number of repeats comes out. */
export function otherTimes(
  job: RowJob,
  at: Step['at'],
  sizes: readonly number[],
  names: readonly string[],
): string | null {
  const repeat = repeatsOf(job, sizes[0] ?? -1).find((step) => step.at.start === at.start)
  return repeat === undefined ? null : instead(job, repeat, sizes, names)
}

/** What to write where a count is missed because some repeat is worked too often or not often enough. */
export function otherCount(job: RowJob, sizes: readonly number[], names: readonly string[]): string | null {
  for (const repeat of repeatsOf(job, sizes[0] ?? -1)) {
    const written = instead(job, repeat, sizes, names)
    if (written !== null) return written
  }
  return null
}

/** Sizes of the row below that a row would fit. */
export interface Fitting {
  readonly fewer: number | null
  readonly more: number | null
  readonly chains: boolean
}

/** The nearest numbers of stitches below on which a row comes out, found by working it on them. */
export function otherRows(job: RowJob, size: number): Fitting | null {
  const fabric = job.fabrics[size]
  const steps = job.steps[size] ?? null
  if (fabric === undefined || fabric.row === null || steps === null) return null
  const { row } = fabric
  const stitches = row.places.filter((place) => job.kinds.list[place]?.what !== 'turning').length
  const first = (direction: 1 | -1): number | null => {
    for (let by = 1; by <= farthest; by += 1) {
      const other = resized(job.kinds, row, by * direction)
      if (other === null) return null
      if (comesOut(inSize(job, size, steps, { ...fabric, row: other }))) return stitches + by * direction
    }
    return null
  }
  return { fewer: first(-1), more: first(1), chains: row.foundation }
}
