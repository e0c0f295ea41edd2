import type { ReaderData } from '../../html/reader-data.ts'
import type { Memory } from '../memory.ts'
import { type Kept, keep, recall, type Whose } from './keep.ts'
import { type Current, currentRow, type Place } from './place.ts'
import type { PlaceWords } from './place-line.ts'
import { type Progress, progressOf } from './progress.ts'
import { type Work, workFor } from './rows.ts'
import { placeName, progressWords, toldNext } from './words.ts'

/** What a reader has in hand: one size of an edition, and how far they have come with it. */
export interface Session {
  /** The numbers that it goes by. */
  readonly of: ReaderData
  readonly size: number
  readonly whose: Whose
  readonly work: Work
  readonly kept: Kept
}

/** `size` is a position in the list of sizes. */
export function openSession(data: ReaderData, size: number, memory: Memory): Session {
  const whose = { slug: data.slug, edition: data.edition, size: data.sizes[size] ?? '' }
  return { of: data, size, whose, work: workFor(data, size), kept: recall(memory, whose) }
}

/** The session with another place, which is remembered. */
export function moved(session: Session, kept: Kept, memory: Memory): Session {
  keep(memory, session.whose, kept)
  return { ...session, kept }
}

/** The same from memory, for another window may have gone on. */
export function reopened(session: Session, memory: Memory): Session {
  return { ...session, kept: recall(memory, session.whose) }
}

export function placeOf({ kept }: Session): Place {
  return kept.place
}

export function currentOf({ work, kept }: Session): Current | null {
  return currentRow(work, kept.place)
}

function progress({ work, kept }: Session): Progress {
  return progressOf(work, kept.place)
}

/** What the line in the bar says; null before anything is done. */
export function lineWords(session: Session): PlaceWords | null {
  const { work, kept } = session
  if (kept.place.at === null && kept.before.length === 0) return null
  const current = currentOf(session)
  const own = progress(session)
  return {
    row: current === null ? 'All rows are done' : placeName(work, kept.place, current),
    progress: progressWords(own),
    percent: own.percent,
    canUndo: kept.before.length > 0,
    allDone: current === null,
  }
}

/** What is said after a step. */
export function saidNext(session: Session): string {
  return toldNext(session.work, session.kept.place, currentOf(session), progress(session))
}
