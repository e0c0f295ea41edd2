import type { Diagnostic, Source } from '../src/diagnostic/index.ts'
import type { Pattern } from '../src/pattern/pattern.ts'

/** What became of a draft in a site build, for the command's summary. */
export interface DraftOutcome {
  readonly source: Source
  readonly pattern: Pattern | null
  readonly diagnostics: readonly Diagnostic[]
}

/** The drafts that this process has rendered, by slug; a draft that is rendered again replaces its entry. */
export const outcomes: Map<string, DraftOutcome> = new Map()
