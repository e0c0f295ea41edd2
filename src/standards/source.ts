/** Where a table was published, and how it came here. */
export interface Source {
  readonly publisher: string
  readonly title: string
  readonly edition: string
  readonly url: string | null
  /** `seen`: read in an independent copy. `from memory`: recalled, not found; not to be shown as checked. */
  readonly how: string
  readonly note: string
}
