import type { Expression, Settled, Statement } from '../../formula/index.ts'
import { fromBase, readQuantity } from '../../measure/index.ts'
import type { Own } from './changes.ts'

/**
 * The statements with a reader's lengths in place of the formulas, in the unit of the draft. A size that has no such length
 * gets none. How sizes lie to each other (`rises`) concerns no reader of one of them, and a length of their own is the same for all.
 */
export function withOwnLengths(statements: readonly Statement[], own: Own | undefined): readonly Statement[] {
  if (own === undefined) return statements
  const { settled } = own.published.graded
  return statements.flatMap((statement): Statement[] => {
    if (statement.kind === 'need') {
      const condition = withoutTrends(statement.condition)
      return condition === null ? [] : [{ ...statement, condition }]
    }
    const text = own.changes.lengths[statement.name]
    const formula = text === undefined ? null : lengthFor(statement, text, settled)
    return [formula === null || statement.kind !== 'define' ? statement : { ...statement, formula }]
  })
}

function lengthFor(
  { name, at }: Extract<Statement, { name: string }>,
  text: string,
  settled: Settled,
): Expression | null {
  const length = readQuantity(text)
  const published = settled.values.get(name)
  if (length === null || published?.kind !== 'length') return null
  const unit = published.unit ?? length.unit
  const own: Expression = { kind: 'number', value: fromBase(length.base, unit), unit, at }
  const items = published.bySize.map((cell): Expression => (cell === null ? { kind: 'none', at } : own))
  return items.includes(own) && items.some((item) => item !== own) ? { kind: 'list', items, at } : own
}

function withoutTrends(condition: Expression): Expression | null {
  if (condition.kind === 'trend') return null
  if (condition.kind !== 'logic' || condition.operator !== 'and') return condition
  const left = withoutTrends(condition.left)
  const right = withoutTrends(condition.right)
  return left === null || right === null ? (left ?? right) : { ...condition, left, right }
}
