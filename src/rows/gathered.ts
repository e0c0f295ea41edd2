import type { Diagnostic } from '../diagnostic/index.ts'
import type { EntryWork } from './entry-row.ts'
import type { Reporting } from './report.ts'
import { entryFindings } from './report.ts'

/** One entry of a row, and what was found in it. */
export interface EntryFound {
  readonly work: EntryWork
  readonly found: readonly Diagnostic[]
}

/** For each size an entry in which something was found for it; null where nothing was. */
type Picks = readonly (EntryWork | null)[]

function concerns({ found }: EntryFound, size: number): boolean {
  return found.some(({ sizes }) => sizes.includes(size))
}

/** The entries as if they were one, each size in its own: a row may have another number in every size. */
function together(first: EntryWork, picks: Picks): EntryWork {
  const { entry, job } = first
  const each = <T>(of: (work: EntryWork, size: number) => T, none: T): readonly T[] =>
    picks.map((work, size) => (work === null ? none : of(work, size)))
  const number = each((work, size) => work.entry.number?.[size] ?? null, null)
  const checked = (size: number): boolean => picks[size]?.checked(size) ?? false
  return {
    ...first,
    entry: { ...entry, number },
    worked: each((work, size) => work.worked[size] ?? null, null),
    checked,
    job: {
      ...job,
      number,
      checked,
      steps: each((work, size) => work.job.steps[size] ?? null, null),
      fabrics: job.fabrics.map((fabric, size) => picks[size]?.job.fabrics[size] ?? fabric),
      resting: job.resting.map((rest, size) => picks[size]?.job.resting[size] ?? rest),
      finished: job.finished.map((pieces, size) => picks[size]?.job.finished[size] ?? pieces),
    },
  }
}

/**
 * What was found in the entries of one written row, each finding once for all sizes that it concerns: sizes come to the
 * same words in entries of their own where a row has other numbers, or a range another end.
 */
export function gathered(reporting: Reporting, entries: readonly EntryFound[]): readonly Diagnostic[] {
  const faulty = entries.filter(({ found }) => found.length > 0)
  if (faulty.length < 2) return faulty.flatMap(({ found }) => found)
  const sizes = reporting.sizes.map((_, size) => faulty.filter((each) => concerns(each, size)).map(({ work }) => work))
  const rounds = Math.max(...sizes.map((own) => own.length))
  return Array.from({ length: rounds }, (_, round) => sizes.map((own) => own[round] ?? null)).flatMap((picks) => {
    const first = picks.find((work) => work !== null)
    return first ? entryFindings(reporting, together(first, picks), (size) => picks[size] === null) : []
  })
}
