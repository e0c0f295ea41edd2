import { draftFindings } from './catalogue/draft.ts'
import { drawingFindings } from './catalogue/drawing.ts'
import { filmFindings } from './catalogue/film.ts'
import { fitFindings } from './catalogue/fit.ts'
import { formulaFindings } from './catalogue/formula.ts'
import { materialFindings } from './catalogue/materials.ts'
import { pictureFindings } from './catalogue/pictures.ts'
import { readerChangeFindings } from './catalogue/reader-changes.ts'
import { readerNeedsFindings } from './catalogue/reader-needs.ts'
import { rowFindings } from './catalogue/rows.ts'
import { safetyFindings } from './catalogue/safety.ts'
import { yarnFindings } from './catalogue/yarn.ts'
import type { Entry } from './entry.ts'

const entries = {
  ...draftFindings,
  ...fitFindings,
  ...formulaFindings,
  ...rowFindings,
  ...yarnFindings,
  ...readerNeedsFindings,
  ...materialFindings,
  ...readerChangeFindings,
  ...pictureFindings,
  ...drawingFindings,
  ...safetyFindings,
  ...filmFindings,
}

/** The name of a kind of finding, stable: scripts and accepted findings refer to it. */
export type Code = keyof typeof entries

/** What the sentences of a kind of finding need to know. */
export type Parameters<C extends Code> = (typeof entries)[C] extends Entry<infer D> ? D : never

/** Every kind of finding there is, by its code. */
export const catalogue: { readonly [C in Code]: Entry<Parameters<C>> } = entries
