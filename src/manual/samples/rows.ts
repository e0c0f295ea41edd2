import type { rowFindings } from '../../diagnostic/catalogue/rows.ts'
import type { Samples } from '../sample.ts'
import { repeatSamples } from './rows/again.ts'
import { countSamples } from './rows/counts.ts'
import { labelSamples } from './rows/labels.ts'
import { readingSamples } from './rows/reading.ts'
import { contradictionSamples } from './rows/words.ts'
import { workingSamples } from './rows/working.ts'

export const rowSamples: Samples<keyof typeof rowFindings> = {
  ...countSamples,
  ...workingSamples,
  ...labelSamples,
  ...readingSamples,
  ...repeatSamples,
  ...contradictionSamples,
}
