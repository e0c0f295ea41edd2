import type { Diagnostic } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { Kind, PerSize } from '../measure/index.ts'
import { type Finishing, type FinishYarn, finishYarn, noFinish } from '../yarn/finish.ts'
import type { Draft } from './draft.ts'
import { factValue } from './fact-value.ts'
import type { FinishFacts } from './facts.ts'
import type { Graded } from './grade.ts'

type AmountKey = Exclude<keyof FinishFacts, 'worked' | 'yarn'>

const keys: readonly AmountKey[] = ['length', 'across', 'strands', 'stitches', 'wraps', 'weight', 'count']
const measures: Readonly<Partial<Record<AmountKey, 'length' | 'mass'>>> = {
  length: 'length',
  across: 'length',
  weight: 'mass',
}

/** One thing that a piece carries, with its yarn for each size. */
export interface CarriedYarn {
  readonly kind: string
  /** Its yarn by name; null for the draft's first. */
  readonly yarn: string | null
  readonly bySize: PerSize<FinishYarn>
  readonly path: readonly (string | number)[]
}

/** The yarn of all that `finish` gives amounts for; what lacks an amount is reported and not counted. */
export function finishesOf(draft: Draft, graded: Graded, findings: Diagnostic[]): CarriedYarn[] {
  return draft.facts.facts.finish.flatMap((item, index) =>
    typeof item === 'string'
      ? []
      : Object.entries(item).map(([kind, amounts]) => {
          const path = ['finish', index, kind]
          const bySize = yarnBySize(kind, amounts, path, draft, graded, findings)
          return { kind, yarn: amounts.yarn ?? null, bySize, path }
        }),
  )
}

function yarnBySize(
  kind: string,
  amounts: FinishFacts,
  path: CarriedYarn['path'],
  draft: Draft,
  graded: Graded,
  findings: Diagnostic[],
): PerSize<FinishYarn> {
  const found = new Map(keys.map((key) => [key, amountOf(key, amounts, [...path, key], draft, graded, findings)]))
  const gauge = graded.environment.gauge(null)
  const perCentimetre = gauge.kind === 'found' ? (gauge.gauge.stitches?.valueOf() ?? null) : null
  const made = draft.facts.facts.sizes.map((_, size) => {
    const amount = (key: AmountKey): number | null => found.get(key)?.[size] ?? null
    const own: Finishing = {
      kind,
      length: amount('length'),
      across: amount('across'),
      strands: amount('strands'),
      stitches: amount('stitches'),
      wraps: amount('wraps'),
      weight: amount('weight'),
      count: amount('count'),
      worked: amounts.worked ?? null,
    }
    return finishYarn(own, perCentimetre)
  })
  const missing = made.find((each) => typeof each === 'string')
  // An amount that is there and wrong has been reported.
  if (typeof missing === 'string' && !(missing in amounts))
    findings.push(diagnose('finish-amount-missing', draft.facts.locate(...path), { kind, missing }))
  return made.map((each) => (typeof each === 'string' ? noFinish : each))
}

/** An amount for each size in centimetres, grams or as a number; null where it is not given, or is none. */
function amountOf(
  key: AmountKey,
  amounts: FinishFacts,
  path: CarriedYarn['path'],
  draft: Draft,
  graded: Graded,
  findings: Diagnostic[],
): PerSize<number | null> | null {
  const found = amounts[key] === undefined ? null : factValue(path, draft, graded, findings)
  if (found === null) return null
  const { at, value } = found
  const kind: Kind | undefined = measures[key]
  const fits = kind === undefined ? value.kind === 'count' || value.kind === 'number' : value.kind === kind
  if (value.kind !== 'text' && fits && value.bySize.every((cell) => cell === null || cell.s > 0n || key !== 'length'))
    return value.bySize.map((cell) => (cell === null ? 0 : cell.valueOf()))
  const wanted = kind === undefined ? 'a number' : kind === 'length' ? 'a length' : 'a weight'
  findings.push(diagnose('finish-amount-wrong', at, { key, wanted }))
  return null
}
