import type { formulaFindings } from '../../diagnostic/catalogue/formula.ts'
import type { Samples } from '../sample.ts'
import { calculationSamples } from './formula/calculation.ts'
import { linkedSamples } from './formula/linked.ts'
import { lookupSamples } from './formula/lookups.ts'
import { meaningSamples } from './formula/meaning.ts'
import { shapingSamples } from './formula/shaping.ts'
import { sizesSamples } from './formula/sizes.ts'
import { writingSamples } from './formula/writing.ts'

export const formulaSamples: Samples<keyof typeof formulaFindings> = {
  ...writingSamples,
  ...meaningSamples,
  ...sizesSamples,
  ...calculationSamples,
  ...shapingSamples,
  ...lookupSamples,
  ...linkedSamples,
}
