import type { Pattern } from '../pattern/pattern.ts'

/** Day of the newest edition, `2026-05-02`: dates come from the drafts alone, never from a clock. Null where none is given. */
export function updatedOn({ published, changes }: Pattern): string | null {
  return latest([published, ...changes.map(({ date }) => date)])
}

/** Day of the newest edition of several patterns. */
export function lastUpdated(patterns: readonly Pattern[]): string | null {
  return latest(patterns.map(updatedOn))
}

/** ISO days in the order of the alphabet are in the order of time. */
function latest(days: readonly (string | null)[]): string | null {
  return days.reduce((last, day) => ((day ?? '') > (last ?? '') ? day : last), null)
}
