import type { Row } from './program.ts'

/** One equation in whole numbers: a factor for each column, and what they come to. */
interface Equation {
  readonly factors: bigint[]
  readonly right: bigint
}

/**
 * Whether the equations among some rows have any solution in whole numbers, bounds aside. A solver that tries number after
 * number does not come to an end with `a + b = 2 * c + 1` beside `a - b = 2 * d`; remainders tell at once.
 *
 * Columns are taken from each other, as in Euclid's algorithm, until the next equation has only one column that no
 * equation before it has settled; that column must then come out whole.
 */
export function haveWholeSolution(rows: readonly Row[], columns: number): boolean {
  const equations = rows.flatMap((row) => equationOf(row, columns))
  const settled = new Map<number, bigint>()
  for (const [index, equation] of equations.entries()) {
    const left = [...settled].reduce((rest, [column, value]) => rest - at(equation, column) * value, equation.right)
    const pivot = reduce(equations.slice(index), settled)
    if (pivot === null && left !== 0n) return false
    if (pivot === null) continue
    const factor = at(equation, pivot)
    if (left % factor !== 0n) return false
    settled.set(pivot, left / factor)
  }
  return true
}

/** None where the row is no equation, or has numbers too large to be exact. */
function equationOf({ lower, upper, terms }: Row, columns: number): readonly Equation[] {
  const exact = [upper, ...terms.map(([, factor]) => factor)].every(Number.isSafeInteger)
  if (lower !== upper || !exact) return []
  const factors = Array.from({ length: columns }, () => 0n)
  for (const [column, factor] of terms) factors[column] = BigInt(factor)
  return [{ factors, right: BigInt(upper) }]
}

function at({ factors }: Equation, column: number): bigint {
  return factors[column] ?? 0n
}

/** Leaves the first equation at most one unsettled column, and gives it; null when it has none. */
function reduce(equations: readonly Equation[], settled: ReadonlyMap<number, bigint>): number | null {
  const [first] = equations
  if (first === undefined) return null
  for (;;) {
    const open = first.factors.flatMap((factor, column) => (factor !== 0n && !settled.has(column) ? [column] : []))
    const [smallest, ...others] = open.sort((a, b) => Number(size(at(first, a)) - size(at(first, b))))
    if (smallest === undefined) return null
    if (others.length === 0) return smallest
    for (const other of others) take(equations, smallest, other, at(first, other) / at(first, smallest))
  }
}

/** Takes one column so many times from another, in every equation. */
function take(equations: readonly Equation[], column: number, from: number, times: bigint): void {
  for (const equation of equations) equation.factors[from] = at(equation, from) - times * at(equation, column)
}

function size(value: bigint): bigint {
  return value < 0n ? -value : value
}
