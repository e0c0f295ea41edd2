import type { Code, Diagnostic, Parameters, Span } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { Value } from '../measure/index.ts'
import type { Environment } from './environment.ts'

/** The names that a formula can use: what they stand for, and which of them are known but broken. */
export interface Names {
  readonly values: ReadonlyMap<string, Value>
  readonly unsound: ReadonlySet<string>
  /** All names of the draft, for a hint that offers the nearest. */
  readonly known: Iterable<string>
}

/** What checking and evaluating one formula needs, and where the findings go. */
export interface Scope {
  readonly environment: Environment
  readonly names: Names
  /** Whether the formula stands in a grading block, where no rows have been worked yet. */
  readonly inGrading: boolean
  readonly findings: Diagnostic[]
  /** Sizes whose result is not used, as in the branch of an `if` that they do not take: nothing is reported for them. */
  readonly skipped: ReadonlySet<number>
}

/** The same scope with more sizes skipped. */
export function skipping(scope: Scope, sizes: readonly number[]): Scope {
  return sizes.length === 0 ? scope : { ...scope, skipped: new Set([...scope.skipped, ...sizes]) }
}

/** The sizes in which something is wrong, without those that are skipped. */
export function concerned(scope: Scope, sizes: readonly number[]): readonly number[] {
  return sizes.filter((size) => !scope.skipped.has(size))
}

/** Adds a finding; gives null, which stands for `cannot say` in every phase. */
export function report<C extends Code>(
  scope: Scope,
  code: C,
  at: Span,
  details: Parameters<C>,
  sizes: readonly number[] = [],
): null {
  scope.findings.push(diagnose(code, at, details, { sizes }))
  return null
}

/** Position of a size by its name, letter case and outer blanks aside; -1 when there is none. */
export function sizeByName(environment: Environment, name: string): number {
  const exact = environment.sizes.indexOf(name)
  const wanted = name.trim().toLowerCase()
  return exact !== -1 ? exact : environment.sizes.findIndex((size) => size.trim().toLowerCase() === wanted)
}
