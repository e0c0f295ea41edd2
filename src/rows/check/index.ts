import type { Diagnostic } from '../../diagnostic/index.ts'
import type { ReadRow } from '../cut.ts'
import type { Vocabulary } from '../reader.ts'
import type { Section } from '../written.ts'
import { countedRowFindings, countedTwiceFindings } from './counts.ts'
import { chainSumFindings } from './counts-as.ts'
import { namedTwiceFindings, rangeFindings } from './numbers.ts'
import { openingFindings } from './openings.ts'
import { ordinalFindings } from './ordinals.ts'
import { rowTexts } from './source.ts'
import { togetherFindings } from './together.ts'
import { topFindings } from './tops.ts'

/** What the words of rows contradict in themselves, whatever the rows come to. */
export function checkWords(
  rows: readonly ReadRow[],
  sections: readonly Section[],
  { sizes, dictionary }: Vocabulary,
): readonly Diagnostic[] {
  const textOf = rowTexts(sections)
  const own = rows.filter((row) => !row.again)
  return [
    ...own.flatMap((row) => {
      const text = textOf(row)
      return [
        ...ordinalFindings(text),
        ...togetherFindings(text),
        ...namedTwiceFindings(row),
        ...rangeFindings(row, text),
        ...countedTwiceFindings(row, sizes),
        ...countedRowFindings(row, text),
      ]
    }),
    ...chainSumFindings(own.map(textOf), dictionary),
    ...topFindings(own, textOf),
    ...openingFindings(own),
  ]
}
