/** A stretch of a draft: UTF-16 offsets from the top of the file, end exclusive. */
export interface Span {
  readonly start: number
  readonly end: number
}

/** The smallest span that covers both. */
export function cover(first: Span, last: Span): Span {
  return { start: Math.min(first.start, last.start), end: Math.max(first.end, last.end) }
}

/** The same stretch, counted from an origin `by` characters earlier. */
export function shift(span: Span, by: number): Span {
  return { start: span.start + by, end: span.end + by }
}
