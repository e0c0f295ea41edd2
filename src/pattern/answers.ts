import type { Diagnostic } from '../diagnostic/index.ts'
import {
  type Environment,
  evaluate,
  type Formula,
  printValue,
  readFormula,
  type Settled,
  unroundedIn,
  usesLedger,
  wholeBySize,
} from '../formula/index.ts'
import type { PerSize, Segment, Value } from '../measure/index.ts'
import { always } from '../measure/index.ts'
import type { LedgerRow } from '../rows/ledger.ts'
import type { HoleContent, MadeByRow } from '../rows/written.ts'
import { bodyNodes, type Draft, spanOf, textAt, walk } from './draft.ts'
import { asFractions, madeEnvironment, type RowLookup } from './made.ts'
import type { Placeholder } from './placeholder.ts'

/** What is printed where a formula has an error, so that the place can be seen in preview. */
const unsettled: readonly Segment[] = [always('??')]

/** The placeholders of a draft: asked first by the row reader, for numbers, then by the faces, for text. */
export interface Answers {
  readonly holeOf: (placeholder: Placeholder) => HoleContent
  /** The printed value; rows must have been worked. `here` finds the row that the placeholder stands in. */
  readonly print: (placeholder: Placeholder, rows: RowLookup, here: () => LedgerRow | null) => readonly Segment[]
}

interface Asked {
  readonly formula: Formula | null
  /** Null where the rows must be worked first, or where there is an error. */
  readonly value: Value | null
}

/** Values by the words of their formulas: a draft asks for the same few again and again. */
type Known = Map<string, Value>

/** Reads every placeholder of a draft and calculates those that need no worked rows. Findings go to `findings`. */
export function askAll(draft: Draft, settled: Settled, environment: Environment, findings: Diagnostic[]): Answers {
  const asked = new Map<Placeholder, Asked>()
  const known: Known = new Map()
  const tell = teller(settled, findings)
  for (const node of walk(bodyNodes(draft))) {
    if (node.type === 'placeholder') asked.set(node, ask(node, draft, settled, environment, known, findings))
  }
  return {
    holeOf: (placeholder) => holeContent(asked.get(placeholder), settled, environment),
    print: (placeholder, rows, here) => {
      const found = asked.get(placeholder)
      if (found === undefined || found.formula === null) return unsettled
      if (!usesLedger(found.formula)) {
        return goingOn(printed(found.value, found.formula, settled, environment, tell), placeholder, draft)
      }
      const outcome = evaluate(found.formula, settled, madeEnvironment(environment, rows, here))
      findings.push(...outcome.diagnostics)
      return printed(outcome.value, found.formula, settled, environment, tell)
    },
  }
}

function ask(
  node: Placeholder,
  draft: Draft,
  settled: Settled,
  environment: Environment,
  known: Known,
  findings: Diagnostic[],
): Asked {
  const at = spanOf(draft, node)
  const inside = { start: at.start + 2, end: at.end - 2 }
  const text = textAt(draft, inside)
  const read = readFormula(text, inside.start)
  findings.push(...read.diagnostics)
  if (read.value === null || usesLedger(read.value)) return { formula: read.value, value: null }
  const before = known.get(text)
  if (before !== undefined) return { formula: read.value, value: before }
  const outcome = evaluate(read.value, settled, environment)
  findings.push(...outcome.diagnostics)
  if (outcome.value !== null && outcome.diagnostics.length === 0) known.set(text, outcome.value)
  return { formula: read.value, value: outcome.value }
}

/** Values as they are printed where nothing more is asked of them. */
const plainly = new WeakMap<Value, readonly Segment[]>()

/** Takes what was found as a formula was printed. */
type Tell = (formula: Formula, found: readonly Diagnostic[]) => void

/** A count that was not rounded where it is calculated is told once, not at every place where it is used. */
function teller(settled: Settled, findings: Diagnostic[]): Tell {
  const told = new Set<string>()
  return (formula, found) => {
    const names = found.some(({ code }) => code === 'count-not-whole') ? unroundedIn(formula.expression, settled) : []
    if (names.length === 0 || names.some((name) => !told.has(name))) findings.push(...found)
    for (const name of names) told.add(name)
  }
}

function printed(
  value: Value | null,
  formula: Formula,
  settled: Settled,
  environment: Environment,
  tell: Tell,
): readonly Segment[] {
  if (value === null) return unsettled
  const before = formula.format === null ? plainly.get(value) : undefined
  if (before !== undefined) return before
  const outcome = printValue(value, formula, environment, settled)
  tell(formula, outcome.diagnostics)
  if (outcome.value !== null && formula.format === null) plainly.set(value, outcome.value)
  return outcome.value ?? unsettled
}

/** After sizes on lines of their own, words that go on with the sentence are for all of them again. */
function goingOn(segments: readonly Segment[], placeholder: Placeholder, draft: Draft): readonly Segment[] {
  if (!segments.some(({ text, show }) => show === 'columns' && text.startsWith('\n'))) return segments
  const { end } = spanOf(draft, placeholder)
  const goesOn = /^[ \t]*\n?[ \t]*[,;\p{L}]/u.test(textAt(draft, { start: end, end: end + 40 }))
  return goesOn ? [...segments, { text: ';\nall sizes', show: 'columns' }] : segments
}

function holeContent(asked: Asked | undefined, settled: Settled, environment: Environment): HoleContent {
  if (asked === undefined || asked.formula === null) return { kind: 'broken' }
  const { formula, value } = asked
  if (usesLedger(formula)) return { kind: 'made', of: (row) => madeNumbers(formula, row, settled, environment) }
  if (value === null) return { kind: 'broken' }
  if (value.kind === 'text') return { kind: 'text', bySize: value.bySize }
  if (value.kind === 'length') return { kind: 'length', bySize: value.bySize.map((cell) => cell?.valueOf() ?? null) }
  const whole = wholeBySize(value)
  return whole === null ? { kind: 'broken' } : { kind: 'number', bySize: whole }
}

/** The numbers that `{{total}}` or `{{count(dc)}}` come to in a row that has been worked; none where they can't be told. */
function madeNumbers(
  formula: Formula,
  row: MadeByRow,
  settled: Settled,
  environment: Environment,
): PerSize<number | null> {
  const here: Environment = {
    ...environment,
    made: ({ what }) => asFractions(what === 'total' ? row.total : row.count(what)),
  }
  const { value } = evaluate(formula, settled, here)
  const whole = value === null || value.kind === 'text' ? null : wholeBySize(value)
  return whole ?? environment.sizes.map(() => null)
}
