import Fraction from 'fraction.js'
import type { Direction, Numeric, PerSize } from '../../measure/index.ts'
import { sizesWhere } from '../../measure/index.ts'
import { wantValue } from '../check.ts'
import { evaluateGrid, evaluateNumeric, type GridSteps } from '../evaluate.ts'
import { reportWanted } from '../mixing.ts'
import { namesIn } from '../order.ts'
import type { Scope } from '../scope.ts'
import { report } from '../scope.ts'
import { isCount } from '../sort.ts'
import type { Expression, RoundNode, Statement } from '../tree.ts'
import type { Count } from './demand.ts'
import { largestCount } from './state.ts'

export type Link = Extract<Statement, { readonly kind: 'link' }>

/** What a linked count is to be near to, and what it must be a multiple of, for every size. */
export interface Wish {
  readonly link: Link
  readonly target: Numeric
  readonly steps: GridSteps
  /** `up`: not below the target; `down`: not above it. */
  readonly direction: Direction
}

const wholes = { kind: 'whole' } as const

/** Calculates what `name ~ target` asks for; null when it cannot be, which is reported. `linked`: names that wait for linked counts. */
export function wishOf(link: Link, linked: ReadonlySet<string>, scope: Scope): Wish | null {
  const { target, name } = link
  if (target === null || !canBeTarget(target, name, linked, scope)) return null
  const round = target.kind === 'round' ? target : null
  const value = evaluateNumeric(round?.operand ?? target, scope)
  const steps = evaluateGrid(round?.to ?? wholes, scope)
  if (value === null || steps === null) return null
  const direction: RoundNode['direction'] = round?.direction ?? 'nearest'
  const large = sizesWhere(value.bySize, (cell) => cell?.gt(largestCount) ?? false)
  if (large.length > 0) return report(scope, 'linked-target-large', target.at, { name, largest: largestCount }, large)
  return { link, target: value, steps, direction }
}

function canBeTarget(target: Expression, name: string, linked: ReadonlySet<string>, scope: Scope): boolean {
  const through = [...namesIn(target)].find((used) => linked.has(used))
  if (through !== undefined) {
    report(scope, 'linked-target-linked', target.at, { name, through })
    return false
  }
  const sort = wantValue(target, scope)
  if (sort === null || isCount(sort)) return sort !== null
  return reportWanted(scope, 'count', { node: target, sort }, '`~`') !== null
}

/** The count to be found for each size; null for a size to which it does not apply. */
export function countsOf({ link, target, steps, direction }: Wish): PerSize<Count | null> {
  return target.bySize.map((wanted, size) => {
    const of = steps.of[size] ?? null
    const plus = steps.plus[size] ?? null
    if (wanted === null || of === null || plus === null) return null
    const least = new Fraction(0)
    const lower = direction === 'up' && wanted.gt(least) ? wanted : least
    const upper = direction === 'down' ? wanted : new Fraction(largestCount)
    return { kind: 'count', name: link.name, size, target: wanted, of, plus, lower, upper }
  })
}
