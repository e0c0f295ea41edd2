import type { Span } from '../../diagnostic/index.ts'
import type { ReadRow } from '../cut.ts'
import type { Passage, Section } from '../written.ts'

/** The characters of a row as they stand in the draft, its label among them, and where they begin. */
export interface RowText {
  readonly text: string
  readonly start: number
}

/** The draft's characters at any place, from the passage that holds it. */
export function rowTexts(sections: readonly Section[]): (row: ReadRow) => RowText {
  const passages: Passage[] = sections.flatMap((section) => section.passages)
  return ({ at, stated }) => {
    const passage = passages.find((each) => each.at.start <= at.start && at.start <= each.at.end)
    if (passage === undefined) return { text: '', start: at.start }
    const end = Math.min(passage.at.end, Math.max(at.end, stated?.at.end ?? 0))
    return { text: passage.text.slice(at.start - passage.at.start, end - passage.at.start), start: at.start }
  }
}

/** Where a match stands in the draft. */
export function spanOf({ start }: RowText, match: { readonly 0: string; readonly index: number }): Span {
  return { start: start + match.index, end: start + match.index + match[0].length }
}
