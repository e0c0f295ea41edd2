import type { Diagnostic, Span } from '../diagnostic/index.ts'
import { evaluate, type Formula, readFormula } from '../formula/index.ts'
import type { Value } from '../measure/index.ts'
import { type Draft, textAt } from './draft.ts'
import type { Graded } from './grade.ts'

/** A fact that is a formula, with its value. */
export interface FactValue {
  readonly at: Span
  readonly formula: Formula
  readonly value: Value
}

/** Calculates the formula at a path of the front matter; null where it has no value, which is reported. */
export function factValue(
  path: readonly (string | number)[],
  draft: Draft,
  { settled, environment }: Graded,
  findings: Diagnostic[],
): FactValue | null {
  const at = draft.facts.locate(...path)
  const read = readFormula(textAt(draft, at), at.start)
  findings.push(...read.diagnostics)
  if (read.value === null) return null
  const evaluated = evaluate(read.value, settled, environment)
  findings.push(...evaluated.diagnostics)
  return evaluated.value === null ? null : { at, formula: read.value, value: evaluated.value }
}
