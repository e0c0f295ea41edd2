import type { Code, Parameters } from './catalogue.ts'
import { catalogue } from './catalogue.ts'
import type { Severity } from './entry.ts'
import type { Span } from './span.ts'

/** Another place that helps to understand a finding: the row that set the count, the first definition … */
export interface Related {
  readonly at: Span
  readonly note: string
}

/**
 * What the program has found in a draft. A value, collected and never thrown; only a report turns
 * offsets into lines and size numbers into names.
 */
export interface Diagnostic {
  readonly code: Code
  readonly severity: Severity
  /** One sentence in the trade's words: what was found, what was expected. */
  readonly message: string
  readonly at: Span
  /** Sizes it concerns, as positions in the draft's list of sizes; empty when it is not about sizes. */
  readonly sizes: readonly number[]
  /** What to write instead; absent when unsure. */
  readonly hint?: string
  readonly related: readonly Related[]
  /** Why the designer lets it stand; it is a note then, whatever it was. Absent for what is not accepted. */
  readonly accepted?: string
}

/** What a phase gives back: its result, and what it found on the way. */
export interface Outcome<T> {
  readonly value: T
  readonly diagnostics: readonly Diagnostic[]
}

interface Extra {
  readonly sizes?: readonly number[]
  readonly related?: readonly Related[]
}

/** Makes a finding from its entry in the catalogue; an unknown code or a missing detail does not compile. */
export function diagnose<C extends Code>(code: C, at: Span, details: Parameters<C>, extra: Extra = {}): Diagnostic {
  const { severity, message, hint } = catalogue[code].write(details)
  return {
    code,
    severity,
    message,
    at,
    sizes: extra.sizes ?? [],
    ...(hint === undefined ? {} : { hint }),
    related: extra.related ?? [],
  }
}
