import { repeatFindings } from './rows/again.ts'
import { countFindings } from './rows/counts.ts'
import { labelFindings } from './rows/labels.ts'
import { readingFindings } from './rows/reading.ts'
import { contradictionFindings } from './rows/words.ts'
import { workingFindings } from './rows/working.ts'

/** Findings about rows. */
export const rowFindings = {
  ...countFindings,
  ...workingFindings,
  ...labelFindings,
  ...readingFindings,
  ...repeatFindings,
  ...contradictionFindings,
} as const
