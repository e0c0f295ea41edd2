import type { Diagnostic } from '../diagnostic/index.ts'
import { printValue } from '../formula/index.ts'
import type { Segment } from '../measure/index.ts'
import type { Draft } from './draft.ts'
import { type FactValue, factValue } from './fact-value.ts'
import type { Graded } from './grade.ts'

/** A finished measure of the draft: its label, its formula with what it comes to, and how that is printed. */
export interface FinishedMeasure extends FactValue {
  readonly label: string
  readonly segments: readonly Segment[]
}

/** Every label with its formula; a measure that was claimed is printed as it was claimed. */
export function finishedMeasures(draft: Draft, graded: Graded, findings: Diagnostic[]): FinishedMeasure[] {
  return Object.entries(draft.facts.facts.finished).flatMap(([label, formula]) => {
    const path = typeof formula === 'string' ? ['finished', label] : ['finished', label, 'claims']
    const found = factValue(path, draft, graded, findings)
    if (found === null) return []
    const printed = printValue(found.value, found.formula, graded.environment, graded.settled)
    findings.push(...printed.diagnostics)
    return printed.value === null ? [] : [{ label, ...found, segments: printed.value }]
  })
}
