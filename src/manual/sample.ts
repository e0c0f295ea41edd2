/**
 * A draft that shows a kind of finding: its front matter without the fences, and its body. In a faulty one ‹ and › stand
 * around the words that the finding is placed at; they are no part of the draft.
 */
export interface WrittenSample {
  /** `title: Mat` and `sizes: [S, M]` where it is left out. */
  readonly facts?: string
  readonly body: string
  /** Files in the draft's folder, by name. */
  readonly beside?: Readonly<Record<string, string>>
  /** What becomes of linked counts where the usual solver is not there. */
  readonly solver?: 'missing' | 'gives up'
}

/** A file as it lies on the disk, for findings about files that are no draft yet. */
export interface FileSample {
  /** Text marked like that of a draft, or bytes. */
  readonly file: string | Uint8Array
  /** What the manual shows of a file that can't be shown. */
  readonly instead?: string
}

export type SampleDraft = WrittenSample | FileSample

/** Two drafts for one kind of finding: one in which it is found, and the same one as it should be. */
export interface Sample {
  readonly faulty: SampleDraft
  readonly sound: SampleDraft
}

/** Samples for kinds of findings, by their codes. */
export type Samples<Code extends string> = Readonly<Record<Code, Sample>>

const usualFacts = 'title: Mat\nsizes: [S, M]'

/** A sample as it is written, marks and all; null for bytes that are no text. */
export function writtenText(draft: SampleDraft): string | null {
  if ('file' in draft) return typeof draft.file === 'string' ? draft.file : null
  const { facts = usualFacts, body } = draft
  return `---\n${facts}\n---\n\n${body}\n`
}

const marks = /[‹›]/g

/** A sample as a designer would have it in a file; null for bytes that are no text. */
export function textOf(draft: SampleDraft): string | null {
  return writtenText(draft)?.replace(marks, '') ?? null
}

/** Both drafts with the same facts or other parts beside their bodies. */
export function pair(faulty: string, sound: string, parts: Omit<WrittenSample, 'body'> = {}): Sample {
  return { faulty: { ...parts, body: faulty }, sound: { ...parts, body: sound } }
}

/** Both drafts with the same body below other facts. */
export function factPair(faulty: string, sound: string, body: string, parts: Partial<WrittenSample> = {}): Sample {
  const head = 'title: Mat\nsizes: [S, M]\n'
  return { faulty: { ...parts, facts: head + faulty, body }, sound: { ...parts, facts: head + sound, body } }
}
