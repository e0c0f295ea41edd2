import type { Diagnostic, Outcome } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { Value } from '../measure/index.ts'
import { wantValue } from './check.ts'
import type { Environment } from './environment.ts'
import { evaluateValue } from './evaluate.ts'
import { chooseLinked } from './linked/link.ts'
import { checkNeed, needsIn } from './need.ts'
import { asksRows, namesIn, orderOf } from './order.ts'
import type { Scope } from './scope.ts'
import type { Expression, Formula, Statement } from './tree.ts'

/** The names of a draft with their values. */
export interface Settled {
  /** In the order of the text. */
  readonly values: ReadonlyMap<string, Value>
  /** Names that are defined but have no value; why has been reported. */
  readonly unsound: ReadonlySet<string>
  /** What each name with a value is calculated from. A linked count counts as its target, rounded. */
  readonly formulas: ReadonlyMap<string, Expression>
}

type Named = Exclude<Statement, { readonly kind: 'need' }>

/** The state of settling: `values` and `unsound` grow, everything else stands. */
interface Work {
  readonly values: Map<string, Value>
  readonly unsound: Set<string>
  /** The statement that counts for each name: the first, in the order of the text. */
  readonly first: ReadonlyMap<string, Named>
  readonly scope: Scope
}

/**
 * Calculates every name of the grading blocks, all statements taken together, and tests every `need`.
 * Always ends. A name that depends on a broken one is unsound and gives no finding of its own.
 */
export function settle(statements: readonly Statement[], environment: Environment): Outcome<Settled> {
  const work = open(statements, environment)
  const formulas = readableFormulas(work)
  const order = orderOf(new Map([...formulas].map(([name, formula]) => [name, namesIn(formula)])))
  for (const circle of order.circles) reportCircle(circle, work)
  const sorted = new Set(order.sorted)
  for (const name of formulas.keys()) if (!sorted.has(name)) work.unsound.add(name)
  const needs = statements.flatMap((statement) => (statement.kind === 'need' ? [statement.condition] : []))
  const waiting = settleLinks(order.sorted, formulas, needs, work)
  for (const name of waiting) settleName(name, formulas.get(name), work)
  for (const need of needs) checkNeed(need, work.scope)
  const settled = { values: inTextOrder(work), unsound: work.unsound, formulas: formulasOf(work) }
  return { value: settled, diagnostics: inOrder(work.scope.findings) }
}

function open(statements: readonly Statement[], environment: Environment): Work {
  const findings: Diagnostic[] = []
  const first = firstOfEach(statements, findings)
  const values = new Map<string, Value>()
  const unsound = new Set<string>()
  const names = { values, unsound, known: [...first.keys()] }
  return { values, unsound, first, scope: { environment, names, inGrading: true, findings, skipped: new Set() } }
}

function firstOfEach(statements: readonly Statement[], findings: Diagnostic[]): ReadonlyMap<string, Named> {
  const first = new Map<string, Named>()
  for (const statement of statements) {
    if (statement.kind === 'need') continue
    const earlier = first.get(statement.name)
    if (earlier === undefined) first.set(statement.name, statement)
    else findings.push(definedTwice(statement, earlier))
  }
  return first
}

function definedTwice({ name, nameAt }: Named, earlier: Named): Diagnostic {
  return diagnose('name-twice', nameAt, { name }, { related: [{ at: earlier.nameAt, note: 'It stands here first.' }] })
}

/** The formulas that were read; names defined by one that was not are unsound. */
function readableFormulas({ first, unsound }: Work): ReadonlyMap<string, Expression> {
  const formulas = new Map<string, Expression>()
  for (const [name, statement] of first) {
    if (statement.kind === 'link') continue
    if (statement.formula === null) unsound.add(name)
    else formulas.set(name, statement.formula)
  }
  return formulas
}

/**
 * Calculates all that does not depend on linked counts, then chooses these. `sorted` has each name after those it uses;
 * what is left of it, in the same order, is given back.
 */
function settleLinks(
  sorted: readonly string[],
  formulas: ReadonlyMap<string, Expression>,
  needs: readonly Expression[],
  work: Work,
): readonly string[] {
  const links = new Map([...work.first].flatMap(([name, one]) => (one.kind === 'link' ? [[name, one] as const] : [])))
  const waiting = new Map<string, Expression>()
  for (const name of sorted) {
    const formula = formulas.get(name)
    const uses = formula === undefined || links.size === 0 ? [] : [...namesIn(formula)]
    const waits = uses.some((used) => links.has(used) || waiting.has(used))
    if (formula !== undefined && waits) waiting.set(name, formula)
    else settleName(name, formula, work)
  }
  if (links.size === 0) return []
  const chosen = chooseLinked({ links, formulas: waiting, needs: needs.flatMap(needsIn), scope: work.scope })
  for (const name of links.keys()) {
    const value = chosen.get(name)
    if (value === undefined) work.unsound.add(name)
    else work.values.set(name, value)
  }
  return [...waiting.keys()]
}

function reportCircle(circle: readonly string[], { first, scope }: Work): void {
  const [start, ...others] = circle.flatMap((name) => first.get(name)?.nameAt ?? [])
  if (start === undefined) return
  const related = others.map((at) => ({ at, note: 'This belongs to the circle.' }))
  scope.findings.push(diagnose('name-circle', start, { names: circle }, { related }))
}

function settleName(name: string, formula: Expression | undefined, { values, unsound, scope }: Work): void {
  const sound = formula !== undefined && wantValue(formula, scope) !== null
  const value = sound ? evaluateValue(formula, scope) : null
  if (value === null) unsound.add(name)
  else values.set(name, value)
}

function formulasOf({ first, values }: Work): ReadonlyMap<string, Expression> {
  return new Map(
    [...first].flatMap(([name, statement]) => {
      const formula = statement.kind === 'link' ? asRounded(statement.target) : statement.formula
      return formula === null || !values.has(name) ? [] : [[name, formula] as const]
    }),
  )
}

function asRounded(target: Expression | null): Expression | null {
  if (target === null || target.kind === 'round') return target
  return { kind: 'round', operand: target, to: { kind: 'whole' }, direction: 'nearest', at: target.at }
}

function inTextOrder({ first, values }: Work): ReadonlyMap<string, Value> {
  return new Map(
    [...first.keys()].flatMap((name) => {
      const value = values.get(name)
      return value === undefined ? [] : [[name, value] as const]
    }),
  )
}

function inOrder(findings: readonly Diagnostic[]): readonly Diagnostic[] {
  return findings.toSorted((a, b) => a.at.start - b.at.start)
}

/**
 * The value of a placeholder. Null when it has none, which is reported, or when a name in it is
 * unsound, which has been reported where the name is defined.
 */
export function evaluate(formula: Formula, settled: Settled, environment: Environment): Outcome<Value | null> {
  const findings: Diagnostic[] = []
  const names = { ...settled, known: knownNames(settled) }
  const scope: Scope = { environment, names, inGrading: false, findings, skipped: new Set() }
  const sound = wantValue(formula.expression, scope) !== null
  const value = sound ? evaluateValue(formula.expression, scope) : null
  return { value, diagnostics: inOrder(findings) }
}

function knownNames({ values, unsound }: Settled): Iterable<string> {
  return { [Symbol.iterator]: () => [...values.keys(), ...unsound][Symbol.iterator]() }
}

/** Whether a placeholder can only be filled once rows have been worked: it holds `total` or `count(…)`. */
export function usesLedger(formula: Formula): boolean {
  return asksRows(formula.expression)
}
