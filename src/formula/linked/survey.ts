import type { Numeric } from '../../measure/index.ts'
import { evaluateNumeric } from '../evaluate.ts'
import { namesIn } from '../order.ts'
import { excerpt } from '../print.ts'
import type { Scope } from '../scope.ts'
import { report } from '../scope.ts'
import type { Expression } from '../tree.ts'
import type { Unknown } from './demand.ts'
import type { Form } from './form.ts'

/** What a formula comes to for one size: `none` where it does not apply, `lost` where it cannot be followed. */
export type Cell = Form | 'none' | 'lost'

/** Why a formula cannot be followed. */
export type Obstacle = 'product' | 'quotient' | 'choice' | 'extremes' | 'other'

/** What following formulas to the linked counts in them needs; `unknowns` and `obstacles` grow. */
export interface Survey {
  /** Findings go nowhere: each formula is checked and reported once the counts are known. */
  readonly scope: Scope
  /** Where an obstacle is reported. */
  readonly aloud: Scope
  /** Positions in `unknowns` for every size, null where the count does not apply. */
  readonly counts: ReadonlyMap<string, readonly (number | null)[]>
  /** Definitions that depend on linked counts. */
  readonly formulas: ReadonlyMap<string, Expression>
  readonly unknowns: Unknown[]
  readonly obstacles: Set<Expression>
  readonly followed: Map<string, Cell>
  readonly given: Map<Expression, Numeric | null>
  readonly depends: Map<Expression, boolean>
}

/** Whether a formula depends on linked counts. */
export function isLinked(node: Expression, survey: Survey): boolean {
  const before = survey.depends.get(node)
  if (before !== undefined) return before
  const names = [...namesIn(node)]
  const linked = names.some((name) => survey.counts.has(name) || survey.formulas.has(name))
  survey.depends.set(node, linked)
  return linked
}

/** The numbers of a formula that depends on no linked count. */
export function given(node: Expression, survey: Survey): Numeric | null {
  const before = survey.given.get(node)
  if (before !== undefined) return before
  const value = evaluateNumeric(node, survey.scope)
  survey.given.set(node, value)
  return value
}

/** Reports, once, that linked counts cannot be followed through a formula. */
export function lose(node: Expression, why: Obstacle, survey: Survey): 'lost' {
  if (!survey.obstacles.has(node)) report(survey.aloud, 'linked-not-linear', node.at, { formula: excerpt(node), why })
  survey.obstacles.add(node)
  return 'lost'
}
