/** `error`: wrong for some reader, stops the build. `warning`: probably wrong. `note`: advice. */
export type Severity = 'error' | 'warning' | 'note'

interface Wording<D> {
  readonly severity: Severity
  /** One sentence for a designer who does not program: what was found, what was expected. */
  readonly says: (details: D) => string
  /** What to write instead; undefined when unsure. */
  readonly hint?: (details: D) => string | undefined
}

/** One kind of finding. `write` turns its details into the sentence and the hint. */
export interface Entry<D> {
  readonly severity: Severity
  readonly write: (details: D) => { severity: Severity; message: string; hint: string | undefined }
}

/** Enters a kind of finding into the catalogue; `D` names the details that its sentences speak of. */
export function entry<D>(wording: Wording<D>): Entry<D> {
  return {
    severity: wording.severity,
    write: (details) => ({
      severity: wording.severity,
      message: wording.says(details),
      hint: wording.hint?.(details),
    }),
  }
}
