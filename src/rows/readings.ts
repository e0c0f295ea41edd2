import { alikeSizes } from './alike.ts'
import type { Fabric, Job, Worked } from './attempt.ts'
import { workFor } from './attempt.ts'
import type { Count } from './count.ts'
import { sizesWhere } from './count.ts'
import type { Kinds } from './fabric.ts'
import type { Departure, Habits } from './habits.ts'
import { habitOf } from './habits.ts'
import type { Stated } from './stated/item.ts'
import { statedFor } from './stated/item.ts'
import { differingItems } from './stated/meaning.ts'
import type { Step } from './step.ts'
import type { Choose, Finished, OpeningRules, Resting } from './work/state.ts'

/** A row to be worked for all sizes. */
export interface RowJob {
  readonly kinds: Kinds
  readonly sizes: number
  readonly style: Job['style']
  readonly rules: OpeningRules
  /** How the author writes, as far as it has been found. */
  readonly habits: Habits
  /** How the same words were read in an earlier row; null where they are new. */
  readonly kept: Choices | null
  /** Null for a size that does not work this row. */
  readonly steps: readonly (readonly Step[] | null)[]
  readonly fabrics: readonly Fabric[]
  readonly resting: readonly ReadonlyMap<number, Resting>[]
  /** Pieces that the row may join, for each size. */
  readonly finished: readonly (readonly Finished[])[]
  /** The number of the row for each size, null where it has none. */
  readonly number: Count | null
  /** What the row must come to, and the sizes for which it must. */
  readonly stated: Stated | null
  readonly checked: (size: number) => boolean
}

/** Choices by their key, as far as they are not taken the usual way. */
export type Choices = ReadonlyMap<string, number>

/** In how many ways a choice can be taken, and which comes first. */
interface Met {
  readonly options: number
  readonly first: number
}

export interface Reading {
  readonly worked: readonly (Worked | null)[]
  /** Choices that came up. */
  readonly met: ReadonlyMap<string, Met>
  readonly choices: Choices
  /** 0 when everything comes out: rows stopped, then rows with stitches left, then counts that differ. */
  readonly faults: readonly [stopped: number, left: number, differing: number]
  /** Sizes for which everything comes out. */
  readonly right: number
}

/** Readings tried before the first is kept as it is. */
const mostReadings = 48

function differing(job: RowJob, worked: Worked, size: number): number {
  if (job.stated === null || !job.checked(size)) return 0
  return differingItems(job.stated, worked, size).length
}

const nothingRests: ReadonlyMap<number, Resting> = new Map()

/** Sizes that share fabric and numbers are worked once. */
function sharedWith(job: RowJob, size: number, steps: readonly Step[]): number {
  // What was left of an earlier row may differ, though the row below does not.
  if ((job.resting[size]?.size ?? 0) > 0) return size
  for (let other = 0; other < size; other += 1) {
    if (job.fabrics[other] !== job.fabrics[size] || job.steps[other] !== steps) continue
    const alike = alikeSizes(steps, job.sizes)
    const alikeNumbers =
      job.number?.[other] === job.number?.[size] && statedTotal(job, other) === statedTotal(job, size)
    if (alike[other] === alike[size] && alikeNumbers) return other
  }
  return size
}

/** What a row comes to by its stated count: all stitches, or the one kind that it names. */
function statedTotal({ stated, checked }: RowJob, size: number): number | null {
  const items = stated?.items.filter(({ by }) => by === null) ?? []
  const [only, ...others] = items
  const kind = only?.of.kind === 'key' && !/^(?:space|chain|together)/.test(only.of.key) && others.length === 0
  const item = items.find(({ of }) => of.kind === 'total') ?? (kind ? only : undefined)
  return item === undefined || !checked(size) ? null : statedFor(item, size)
}

/** What one size of a row needs to be worked. */
export function sizeJob(job: RowJob, size: number, steps: readonly Step[], fabric: Fabric): Job {
  const { kinds, style, rules } = job
  const number = job.number?.[size] ?? null
  const resting = job.resting[size] ?? nothingRests
  return {
    kinds,
    size,
    steps,
    style,
    fabric,
    rules,
    number,
    resting,
    statedTotal: statedTotal(job, size),
    finished: job.finished[size] ?? [],
  }
}

function workSize(job: RowJob, size: number, earlier: readonly (Worked | null)[], choose: Choose): Worked | null {
  const steps = job.steps[size] ?? null
  const fabric = job.fabrics[size]
  if (steps === null || fabric === undefined) return null
  const other = sharedWith(job, size, steps)
  if (other < size) return earlier[other] ?? null
  return workFor(sizeJob(job, size, steps, fabric), choose)
}

function firstFor({ kept, habits }: RowJob, key: string, usual: number): number {
  const habit = habitOf(key)
  return kept?.get(key) ?? (habit === null ? undefined : habits.get(habit)) ?? usual
}

function readingWith(job: RowJob, choices: Choices): Reading {
  const met = new Map<string, Met>()
  const choose = (key: string, options: number, usual = 0): number => {
    const known = met.get(key)
    const first = known?.first ?? firstFor(job, key, usual)
    met.set(key, { options: Math.max(options, known?.options ?? 0), first })
    return Math.min(choices.get(key) ?? first, options - 1)
  }
  const worked: (Worked | null)[] = []
  const faults: [number, number, number] = [0, 0, 0]
  let right = 0
  for (let size = 0; size < job.sizes; size += 1) {
    const result = workSize(job, size, worked, choose)
    worked.push(result)
    if (result === null) continue
    const before = faults[0] + faults[1] + faults[2]
    if (result.stop !== null) faults[0] += 1
    else if (result.left > 0 && !result.leftSaid) faults[1] += 1
    if (result.stop === null) faults[2] += differing(job, result, size)
    if (faults[0] + faults[1] + faults[2] === before) right += 1
  }
  return { worked, met, choices, faults, right }
}

function comesOut(reading: Reading): boolean {
  return reading.faults.every((count) => count === 0)
}

function isStated(job: RowJob): boolean {
  return job.stated !== null && sizesWhere(job.sizes, job.checked).length > 0
}

/**
 * Whether nouns may have been taken too strictly: there is no such place, or it is not what the stated count says.
 * Stitches that were jumped over are not worked by calling them something else.
 */
function isMisnamed(job: RowJob, { worked, faults: [stopped, left, differs] }: Reading): boolean {
  if (worked.some((result) => result?.stop?.why === 'no such place' || result?.stop?.why === 'goes nowhere'))
    return true
  return isStated(job) && (stopped > 0 || (differs > 0 && left === 0))
}

/** Single departures from the first reading, then pairs of them. */
function* departures(met: ReadonlyMap<string, Met>, witnessed: boolean): Generator<Choices> {
  const single: [string, number][] = []
  for (const [key, { options, first }] of met) {
    // Taking nouns loosely needs a witness: the stated count, or that there is no such place at all.
    if (key === 'nouns' && !witnessed) continue
    for (let option = 0; option < Math.min(options, 9); option += 1) if (option !== first) single.push([key, option])
  }
  for (const choice of single) yield new Map([choice])
  for (const [index, first] of single.entries()) {
    for (const second of single.slice(index + 1)) if (first[0] !== second[0]) yield new Map([first, second])
  }
}

/**
 * The same words in a later row are read the same way, unless they do not go into it at all: a count that differs is no
 * reason to read them another way.
 */
function staysAsKept({ kept }: RowJob, { faults: [stopped, left] }: Reading): boolean {
  return kept !== null && stopped === 0 && left === 0
}

function stopsLess(reading: Reading, best: Reading): boolean {
  return reading.right === best.right && reading.faults[0] < best.faults[0]
}

/**
 * Works a row for every size by the reading under which it comes out: no stop, nothing left, stated
 * counts met. Where none does for all, the one that does for most: a slip in one size must not be told of
 * the others. Of readings that are alike in this the first stands: the convention of the trade.
 */
export function bestReading(job: RowJob): Reading {
  const first = readingWith(job, new Map())
  if (comesOut(first) || first.met.size === 0 || staysAsKept(job, first)) return first
  let best = first
  let tried = 0
  const nouns = isMisnamed(job, first)
  for (const choices of departures(first.met, isMisnamed(job, first))) {
    const reading = readingWith(job, choices)
    if (comesOut(reading)) return reading
    if (reading.right > best.right || (nouns && stopsLess(reading, best))) best = reading
    tried += 1
    if (tried === mostReadings) break
  }
  return best
}

/** Every choice of a reading as it was taken, to read the same words so again. */
export function choicesOf({ met, choices }: Reading): Choices {
  return new Map([...met].map(([key, { first }]) => [key, choices.get(key) ?? first]))
}

/** Where a row comes out, but only by another way than is the author's habit. */
export function departuresOf(reading: Reading): readonly Departure[] {
  if (!comesOut(reading)) return []
  return [...reading.choices].flatMap(([key, option]) => {
    const habit = habitOf(key)
    return habit === null ? [] : [{ habit, option }]
  })
}
