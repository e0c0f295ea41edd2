import { calculationFindings } from './formula/calculation.ts'
import { linkedFindings } from './formula/linked.ts'
import { lookupFindings } from './formula/lookups.ts'
import { meaningFindings } from './formula/meaning.ts'
import { shapingFindings } from './formula/shaping.ts'
import { sizesFindings } from './formula/sizes.ts'
import { writingFindings } from './formula/writing.ts'

/** Findings about formulas, swatches and body tables. */
export const formulaFindings = {
  ...writingFindings,
  ...meaningFindings,
  ...sizesFindings,
  ...calculationFindings,
  ...shapingFindings,
  ...lookupFindings,
  ...linkedFindings,
} as const
