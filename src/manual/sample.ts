/** A draft that shows a kind of finding: its front matter without the fences, and its body. */
export interface SampleDraft {
  /** `title: Mat` and `sizes: [S, M]` where it is left out. */
  readonly facts?: string
  readonly body: string
  /** Files in the draft's folder, by name. */
  readonly beside?: Readonly<Record<string, string>>
}

/** Two drafts for one kind of finding: one in which it is found, and the same one as it should be. */
export interface Sample {
  readonly faulty: SampleDraft
  readonly sound: SampleDraft
}

const usualFacts = 'title: Mat\nsizes: [S, M]'

/** A sample draft as a file. */
export function textOf({ facts = usualFacts, body }: SampleDraft): string {
  return `---\n${facts}\n---\n\n${body}\n`
}
