import { type Diagnostic, placeOf, type Severity, type Source } from '../diagnostic/index.ts'

/** A diagnostic as people and scripts read it: with line, column and the names of sizes. */
export interface Finding {
  readonly code: string
  readonly severity: Severity
  readonly line: number
  readonly column: number
  readonly sizes: readonly string[]
  readonly message: string
  readonly hint: string | null
  /** Why the designer lets it stand; null for what is not accepted. */
  readonly accepted: string | null
}

/** Findings in the order of the draft; at one place, in the order of their codes. */
export function findingsOf(source: Source, sizes: readonly string[], diagnostics: readonly Diagnostic[]): Finding[] {
  return [...diagnostics]
    .sort((a, b) => a.at.start - b.at.start || (a.code < b.code ? -1 : Number(a.code > b.code)))
    .map((diagnostic) => ({
      code: diagnostic.code,
      severity: diagnostic.severity,
      ...placeOf(source, diagnostic.at.start),
      sizes: diagnostic.sizes.flatMap((size) => sizes[size] ?? []),
      message: diagnostic.message,
      hint: diagnostic.hint ?? null,
      accepted: diagnostic.accepted ?? null,
    }))
}
