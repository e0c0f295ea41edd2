import type { Code } from '../../diagnostic/index.ts'
import type { Samples } from '../sample.ts'
import { draftSamples } from './draft.ts'
import { drawingSamples } from './drawing.ts'
import { filmSamples } from './film.ts'
import { fitSamples } from './fit.ts'
import { formulaSamples } from './formula.ts'
import { materialSamples } from './materials.ts'
import { pictureSamples } from './pictures.ts'
import { readerChangeSamples } from './reader-changes.ts'
import { readerNeedsSamples } from './reader-needs.ts'
import { rowSamples } from './rows.ts'
import { safetySamples } from './safety.ts'
import { yarnSamples } from './yarn.ts'

/** Every kind of finding with its two drafts; a kind without them does not compile. */
export const samples: Samples<Code> = {
  ...draftSamples,
  ...fitSamples,
  ...formulaSamples,
  ...rowSamples,
  ...yarnSamples,
  ...readerNeedsSamples,
  ...materialSamples,
  ...readerChangeSamples,
  ...pictureSamples,
  ...drawingSamples,
  ...safetySamples,
  ...filmSamples,
}
