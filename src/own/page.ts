import { contentsOf } from '../components/sections.ts'
import {
  bodyHtml,
  contentsHtml,
  cutIntroduction,
  partHtml,
  partNames,
  type ReaderData,
  readerData,
  segmentsHtml,
  spokenCss,
} from '../html/index.ts'
import type { Pattern } from '../pattern/pattern.ts'

/** What a page shows of a pattern's numbers, ready to be put in place: made by what made the page. */
export interface PageNumbers {
  /** By the `data-part` of the elements that they are in. */
  readonly parts: Readonly<Record<string, string>>
  readonly data: ReaderData
  /** What is heard, as a style sheet. */
  readonly spoken: string
  /** What a reader has changed: a label, and both texts as HTML. */
  readonly own: readonly { readonly label: string; readonly own: string; readonly published: string }[]
}

export function pageNumbers(pattern: Pattern): PageNumbers {
  const { introduction, instructions } = cutIntroduction(bodyHtml(pattern), pattern.body)
  const beside = partNames.map((name): [string, string] => [name, partHtml(name, pattern)])
  return {
    parts: { ...Object.fromEntries(beside), contents: contentsHtml(contentsOf(pattern)), introduction, instructions },
    data: readerData(pattern),
    spoken: spokenCss(pattern),
    own: pattern.own.map(({ label, own, published }) => ({
      label,
      own: segmentsHtml(own),
      published: segmentsHtml(published),
    })),
  }
}
