import type { Diagnostic } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import { printValue } from '../formula/index.ts'
import type { Segment } from '../measure/index.ts'
import type { Draft } from './draft.ts'
import { type FactValue, factValue } from './fact-value.ts'
import type { Graded } from './grade.ts'

/** A finished measure of the draft: its label, its formula with what it comes to, and how that is printed. */
export interface FinishedMeasure extends FactValue {
  readonly label: string
  readonly segments: readonly Segment[]
  /** The measure was claimed, not calculated: the stitches that it is said to lie over. Null for one that is calculated. */
  readonly over: FactValue | null
}

/** Every label with its formula; a measure that was claimed is printed as it was claimed. */
export function finishedMeasures(draft: Draft, graded: Graded, findings: Diagnostic[]): FinishedMeasure[] {
  return Object.entries(draft.facts.facts.finished).flatMap(([label, formula]) => {
    const path = typeof formula === 'string' ? ['finished', label] : ['finished', label, 'claims']
    const found = factValue(path, draft, graded, findings)
    const over = typeof formula === 'string' ? null : claimedOver(label, found, draft, graded, findings)
    if (found === null) return []
    const printed = printValue(found.value, found.formula, graded.environment, graded.settled)
    findings.push(...printed.diagnostics)
    return printed.value === null ? [] : [{ label, ...found, segments: printed.value, over }]
  })
}

/** The stitches under a claim; null, with findings, where claim or stitches are of the wrong kind. */
function claimedOver(
  label: string,
  claim: FactValue | null,
  draft: Draft,
  graded: Graded,
  findings: Diagnostic[],
): FactValue | null {
  const over = factValue(['finished', label, 'over'], draft, graded, findings)
  if (claim === null || over === null) return null
  if (claim.value.kind !== 'length') findings.push(diagnose('claim-unfit', claim.at, { label, part: 'claims' }))
  const counts = over.value.kind === 'count' || over.value.kind === 'number'
  if (!counts) findings.push(diagnose('claim-unfit', over.at, { label, part: 'over' }))
  return counts && claim.value.kind === 'length' ? over : null
}
