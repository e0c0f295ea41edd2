import type { Diagnostic, Span } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { Worked } from './attempt.ts'
import { printCount } from './count.ts'
import type { EntryWork } from './entry-row.ts'
import type { Wording } from './findings.ts'
import { isEndless, sizesNamed } from './findings.ts'
import { printTally } from './print.ts'
import type { RowJob } from './readings.ts'
import type { CountingRule, Stated } from './stated/item.ts'
import { statedFor } from './stated/item.ts'
import { differingItems, verdictOn, workedCount } from './stated/meaning.ts'
import { openMeanings } from './stated/names.ts'
import { otherCount } from './suggest.ts'
import type { Dictionary } from './terms/dictionary.ts'
import { closedKey } from './work/make.ts'

/** What one kind of stitch comes to, as stated and as worked. */
interface Differing {
  readonly shown: string
  readonly stated: number
  readonly worked: number
}

/** Where a stated count and the worked one differ, for one size. */
export interface Mismatch {
  readonly size: number
  /** Worked less stated, for the first kind that differs. */
  readonly by: number
  readonly parts: readonly Differing[]
}

export function mismatchOf(stated: Stated, worked: Worked, size: number, dictionary: Dictionary): Mismatch | null {
  const parts = differingItems(stated, worked, size).map((item) => ({
    shown: item.of.kind === 'key' && item.of.key !== 'space' ? printTally(item.of.key, dictionary) : item.shown,
    stated: statedFor(item, size) ?? 0,
    worked: workedCount(item, worked),
  }))
  const [first] = parts
  return first === undefined ? null : { size, by: first.worked - first.stated, parts }
}

/** `60 (72, 84) sc, 10 shells`: one side of all that differs, for the sizes for which it does. */
function printSide(mismatches: readonly Mismatch[], side: 'stated' | 'worked', named: boolean): string {
  const kinds = new Set(mismatches.flatMap((each) => each.parts.map((part) => part.shown)))
  const shown = [...kinds].map((kind) => {
    const counts = mismatches.map((each) => each.parts.find((part) => part.shown === kind)?.[side] ?? null)
    const number = printCount(counts)
    if (!named && kinds.size === 1) return number
    return `${number} ${kind === 'total' ? (number === '1' ? 'st' : 'sts') : kind}`
  })
  return shown.join(', ')
}

/** Whether words settle how the opening chain counts; where they do not, the other way has been tried. */
function openingIsSaid({ steps, rules }: RowJob): boolean {
  return steps.some((own) =>
    own?.some((step) => {
      if (step.kind === 'chain') return step.counting !== null || rules.said.has(step.count[0] ?? 0)
      return step.kind === 'work' && step.where.kind === 'fromHook' && step.where.counting !== null
    }),
  )
}

/** Decreases are stitches too: what is missed is as many as they are. */
function decreaseCause(mismatches: readonly Mismatch[], worked: readonly (Worked | null)[]): string | null {
  const all = mismatches.every(({ size, by, parts }) => {
    let closed = 0
    for (const [key, count] of worked[size]?.inside ?? []) if (key.startsWith(closedKey(''))) closed += count
    return parts.length === 1 && closed > 0 && by === closed
  })
  return all ? 'A decrease counts as a stitch too.' : null
}

/** Whether the miss is the opening chain, counted where the draft says that it is not, or the other way. */
function openingCause(mismatches: readonly Mismatch[], worked: readonly (Worked | null)[], job: RowJob): string | null {
  const { kinds } = job
  if (!openingIsSaid(job)) return null
  const all = (holds: (result: Worked, by: number) => boolean): boolean =>
    mismatches.every(({ size, by, parts }) => {
      const result = worked[size] ?? null
      return result !== null && parts.length === 1 && holds(result, by)
    })
  if (all((result, by) => by === 1 && result.turningStitches === 1))
    return 'The opening chain counts as a stitch here; if it should not, write “(does not count as a st)” after it.'
  const stands = (result: Worked): boolean =>
    result.fabric.row?.places.some((place) => kinds.list[place]?.what === 'turning') ?? false
  return all((result, by) => by === -1 && stands(result))
    ? 'The opening chain does not count as a stitch here; if it should, write “(counts as 1 st)” after it.'
    : null
}

const counts: ReadonlyMap<CountingRule, string> = new Map([
  ['no opening', 'without the opening chain'],
  ['spaces', 'each space as a stitch too'],
  ['chains', 'the chains of spaces as stitches too'],
  ['slips', 'slip stitches too'],
  ['groups', 'groups in one place'],
])

/** That the pattern counts in a way of its own, where it does. */
function ownCounting({ stated }: RowJob): string | null {
  const rule = stated?.items.flatMap((item) => item.by ?? []).find((each) => counts.has(each))
  return rule === undefined ? null : `As in its other rows, the pattern counts ${counts.get(rule)}.`
}

/** What a miss comes from where that is plain, and what to write. */
export function mismatchCause(
  mismatches: readonly Mismatch[],
  worked: readonly (Worked | null)[],
  { job, names }: Wording,
): string | null {
  const own = ownCounting(job)
  if (own !== null) return own
  const sizes = mismatches.map((each) => each.size)
  const plain =
    openingCause(mismatches, worked, job) ?? decreaseCause(mismatches, worked) ?? otherCount(job, sizes, names)
  if (plain !== null) return plain
  const left = worked[sizes[0] ?? -1]?.left ?? 0
  if (left === 0) return null
  const words = left === 1 ? '1 stitch of the row below is' : `${left} stitches of the row below are`
  return `${words} not worked; look for a repeat that is one too few.`
}

/** One finding for all sizes that state the wrong count, with both counts of each of them side by side. */
export function mismatchFinding(
  mismatches: readonly Mismatch[],
  row: string,
  at: Span,
  cause: string | null,
  names: readonly string[],
): Diagnostic | null {
  const [first] = mismatches
  if (first === undefined) return null
  const sizes = mismatches.map((each) => each.size)
  const details = {
    row,
    kinds: first.parts.map((part) => part.shown),
    stated: printSide(mismatches, 'stated', true),
    worked: printSide(mismatches, 'worked', false),
    sizes: sizesNamed(sizes, names),
    cause,
  }
  return diagnose('count-mismatch', at, details, { sizes })
}

/** `6 groups in one place, 12 spaces`: what a row makes that designers count by names of their own. */
function madeBeside(worked: Worked): string {
  const meant = openMeanings(worked, { name: '', size: null })
  const shown = [
    ['groups', 'group in one place', 'groups in one place'],
    ['spaces', 'space', 'spaces'],
    ['specials', 'special stitch', 'special stitches'],
  ].flatMap(([key = '', single = '', plural = '']) => {
    const count = meant.get(key) ?? 0
    return count === 0 ? [] : [`${count} ${count === 1 ? single : plural}`]
  })
  return shown.join(', ')
}

/** A count by a name that fits nothing in the row; null where each has a meaning. */
export function uncheckedFinding(
  { worked, checked }: Pick<EntryWork, 'worked' | 'checked'>,
  stated: Stated,
  row: string,
): Diagnostic | null {
  for (const item of stated.items) {
    const sizes = worked.flatMap((result, size) => {
      const works = result !== null && result.stop === null && !isEndless(result)
      const doubtful = works && checked(size) && verdictOn(item, stated, result, size) === 'unchecked'
      return doubtful ? [size] : []
    })
    const [first] = sizes
    const result = first === undefined ? null : (worked[first] ?? null)
    if (first === undefined || result === null) continue
    const noun = `${statedFor(item, first) ?? ''} ${item.shown}`.trim()
    return diagnose('count-unread', stated.at, { row, noun, makes: madeBeside(result) }, { sizes })
  }
  return null
}
