import type { Severity } from '../../diagnostic/index.ts'

/** How a report marks its words on the paper at hand: colours on a terminal, nothing in a file. */
export interface Paint {
  readonly severity: (severity: Severity, text: string) => string
  /** Headings and the words that matter most. */
  readonly strong: (text: string) => string
  /** What only helps to find one's way. */
  readonly faint: (text: string) => string
}

export const plainPaint: Paint = {
  severity: (_, text) => text,
  strong: (text) => text,
  faint: (text) => text,
}
