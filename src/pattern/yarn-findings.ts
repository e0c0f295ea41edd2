import type { Diagnostic } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { PerSize } from '../measure/index.ts'
import { onceOrColumns, textForAll } from '../measure/index.ts'
import type { Ledger } from '../rows/ledger.ts'
import type { YarnEstimate, YarnRow } from '../yarn/estimate.ts'
import type { Draft } from './draft.ts'

/** Yarn that falls from one size to the next; the arithmetic's own crumbs are no fall. */
export function* fallFindings(draft: Draft, { byYarn }: YarnEstimate): Generator<Diagnostic> {
  const { yarn, sizes } = draft.facts.facts
  for (const [index, { as }] of yarn.entries()) {
    const grams = byYarn[index] ?? []
    const at = grams.findIndex((own, size) => size > 0 && own < (grams[size - 1] ?? 0) - 0.5)
    if (at < 0) continue
    const details = {
      yarn: as,
      larger: sizes[at] ?? '',
      smaller: sizes[at - 1] ?? '',
      grams: [Math.ceil(grams[at - 1] ?? 0), Math.ceil(grams[at] ?? 0)] as const,
    }
    yield diagnose('yarn-falls', draft.facts.locate('yarn', index, 'as'), details, { sizes: [at] })
  }
}

/** Where rows don't tell their yarn, what is taken instead; nothing where there is nothing to estimate from. */
export function* unclearFindings(
  draft: Draft,
  ledger: Ledger,
  rows: readonly YarnRow[],
  { byShare, byYarn, total }: YarnEstimate,
): Generator<Diagnostic> {
  const { yarn } = draft.facts.facts
  if (!byShare || yarn.length < 2 || (total === null && byYarn.every((grams) => grams === null))) return
  const instead = insteadOf(
    byYarn.some((grams) => grams !== null),
    total,
  )
  const unclear = rows.findIndex(({ strands }) => strands === null)
  const row = ledger.rows[unclear]
  if (row !== undefined) {
    const name = row.label ?? `a row of “${row.piece}”`
    yield diagnose('row-yarn-unclear', row.at, { row: name, piece: row.piece, instead })
    return
  }
  for (const [index, { as }] of yarn.entries()) {
    if (rows.some(({ strands }) => (strands?.[index] ?? 0) > 0)) continue
    yield diagnose('yarn-without-rows', draft.facts.locate('yarn', index, 'as'), { yarn: as, instead })
  }
}

function insteadOf(scaled: boolean, total: PerSize<number> | null): string {
  if (scaled) return 'each yarn is scaled from the weighed sample by the stitches of the whole piece'
  return `together they come to about ${textForAll(onceOrColumns((total ?? []).map((gram) => String(Math.ceil(gram - 1e-6)))))} g`
}
