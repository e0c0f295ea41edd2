import { draftFindings } from '../diagnostic/catalogue/draft.ts'
import { drawingFindings } from '../diagnostic/catalogue/drawing.ts'
import { filmFindings } from '../diagnostic/catalogue/film.ts'
import { fitFindings } from '../diagnostic/catalogue/fit.ts'
import { calculationFindings } from '../diagnostic/catalogue/formula/calculation.ts'
import { linkedFindings } from '../diagnostic/catalogue/formula/linked.ts'
import { lookupFindings } from '../diagnostic/catalogue/formula/lookups.ts'
import { meaningFindings } from '../diagnostic/catalogue/formula/meaning.ts'
import { shapingFindings } from '../diagnostic/catalogue/formula/shaping.ts'
import { sizesFindings } from '../diagnostic/catalogue/formula/sizes.ts'
import { writingFindings } from '../diagnostic/catalogue/formula/writing.ts'
import { materialFindings } from '../diagnostic/catalogue/materials.ts'
import { pictureFindings } from '../diagnostic/catalogue/pictures.ts'
import { readerChangeFindings } from '../diagnostic/catalogue/reader-changes.ts'
import { readerNeedsFindings } from '../diagnostic/catalogue/reader-needs.ts'
import { repeatFindings } from '../diagnostic/catalogue/rows/again.ts'
import { countFindings } from '../diagnostic/catalogue/rows/counts.ts'
import { labelFindings } from '../diagnostic/catalogue/rows/labels.ts'
import { readingFindings } from '../diagnostic/catalogue/rows/reading.ts'
import { contradictionFindings } from '../diagnostic/catalogue/rows/words.ts'
import { workingFindings } from '../diagnostic/catalogue/rows/working.ts'
import { safetyFindings } from '../diagnostic/catalogue/safety.ts'
import { yarnFindings } from '../diagnostic/catalogue/yarn.ts'
import type { Code } from '../diagnostic/index.ts'
import { catalogue } from '../diagnostic/index.ts'

/** A part of the manual. */
export interface Group {
  readonly title: string
  readonly codes: readonly Code[]
}

const all: readonly (readonly [title: string, findings: object])[] = [
  ['Counts of rows', countFindings],
  ['Steps that don’t fit', workingFindings],
  ['Numbers and sides of rows', labelFindings],
  ['Rows that go back to others', repeatFindings],
  ['Words that contradict each other', contradictionFindings],
  ['Rows that can’t be read', readingFindings],
  ['Measures', fitFindings],
  ['What a reader needs', readerNeedsFindings],
  ['What a reader may change', readerChangeFindings],
  ['Pictures', pictureFindings],
  ['Drawings', drawingFindings],
  ['Films', filmFindings],
  ['Safety', safetyFindings],
  ['Yarn', yarnFindings],
  ['Hooks and yarn as published', materialFindings],
  ['The file and its facts', draftFindings],
  ['Formulas: how they are written', writingFindings],
  ['Formulas: what goes together', meaningFindings],
  ['Formulas: sizes', sizesFindings],
  ['Formulas: what they come to', calculationFindings],
  ['Formulas: shaping', shapingFindings],
  ['Formulas: swatch and body table', lookupFindings],
  ['Formulas: linked counts', linkedFindings],
]

function isCode(name: string): name is Code {
  return name in catalogue
}

const grouped = all.map(([title, findings]): Group => ({ title, codes: Object.keys(findings).filter(isCode) }))
const placed = new Set(grouped.flatMap(({ codes }) => codes))
const others = Object.keys(catalogue).filter((code) => isCode(code) && !placed.has(code))

/** All kinds of findings by what they are about, what a designer meets most often first. */
export const groups: readonly Group[] = [...grouped, { title: 'Others', codes: others.filter(isCode) }].filter(
  ({ codes }) => codes.length > 0,
)
