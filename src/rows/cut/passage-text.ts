import type { Span } from '../../diagnostic/index.ts'
import type { Hole, Passage } from '../written.ts'

/** A stretch of a passage: at most one row. */
export interface Chunk {
  readonly passage: Passage
  /** As it is to be read; every character keeps its place. */
  readonly text: string
  readonly start: number
}

/** The stretch with blanks in place of some of it. */
export function blanked(text: string, start: number, end: number, colon = false): string {
  const length = Math.max(0, end - start)
  const blank = colon && length > 0 ? `${' '.repeat(length - 1)}:` : ' '.repeat(length)
  return text.slice(0, start) + blank + text.slice(end)
}

export function spanOfChunk({ start, text }: Chunk): Span {
  return { start, end: start + text.length }
}

export function holesIn(holes: readonly Hole[], at: Span): readonly Hole[] {
  return holes.filter((hole) => hole.at.start >= at.start && hole.at.end <= at.end)
}

/** Whether nothing but blanks stands before a place in its line. */
export function opensLineIn({ text, start }: Chunk, at: number): boolean {
  const before = text.slice(Math.max(0, at - start - 40), at - start)
  return /\n[\s>]*$/.test(before)
}
