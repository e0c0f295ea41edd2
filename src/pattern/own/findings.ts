import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose, nearestTo } from '../../diagnostic/index.ts'
import { roundedIn, roundingsOf } from '../../formula/index.ts'
import { printMeasure, textForSize } from '../../measure/index.ts'
import type { Draft } from '../draft.ts'
import type { Graded } from '../grade.ts'
import type { AdjustableLength } from '../pattern.ts'
import { adjustablesOf, limitsOf } from './adjustables.ts'

/** What a draft lets its readers change and can't: it would leave rows as they are, or is nothing that could be changed. */
export function* adjustmentFindings(draft: Draft, graded: Graded): Generator<Diagnostic> {
  const adjustables = adjustablesOf(draft, graded)
  for (const [name, allowed] of Object.entries(draft.facts.facts.reader)) {
    if ('within' in allowed)
      yield* gaugeFindings(
        draft,
        name,
        adjustables.some(({ kind }) => kind === 'gauge'),
      )
    else yield* lengthFindings(draft, name, graded, limitsOf(allowed) === null ? allowed : null)
  }
  for (const each of adjustables) if (each.kind === 'length') yield* outsideFindings(draft, each, graded)
}

interface Written {
  readonly from: string
  readonly to: string
}

/** `wrong` are limits that are none. */
function* lengthFindings(draft: Draft, name: string, graded: Graded, wrong: Written | null): Generator<Diagnostic> {
  const { settled, environment } = graded
  const at = draft.facts.locate('reader', name)
  const value = settled.values.get(name)
  const formula = settled.formulas.get(name)
  if (value === undefined && settled.unsound.has(name)) return
  if (value === undefined) {
    yield diagnose('reader-unknown', at, { name, nearest: nearestTo(name, settled.values.keys()) })
  } else if (value.kind !== 'length') {
    yield diagnose('reader-not-length', at, { name })
  } else {
    const rounded = formula === undefined ? [] : roundedIn(formula, roundingsOf(settled, environment), settled)
    const [first] = rounded
    if (first !== undefined) yield diagnose('reader-rounded', at, { name, count: first.name })
    if (wrong !== null) yield diagnose('reader-limits', at, { from: wrong.from, to: wrong.to })
  }
}

function* outsideFindings(
  draft: Draft,
  { name, bySize, from, to }: AdjustableLength,
  { settled }: Graded,
): Generator<Diagnostic> {
  const sizes = bySize.flatMap((cell, size) => (cell !== null && (cell < from || cell > to) ? [size] : []))
  const value = settled.values.get(name)
  if (sizes.length === 0 || value === undefined) return
  const printed = printMeasure(value, null)
  const cases = sizes.map((size) => `${draft.facts.facts.sizes[size]}: ${textForSize(printed, size)}`).join('; ')
  yield diagnose('reader-outside', draft.facts.locate('reader', name), { name, cases }, { sizes })
}

/** With a gauge of a reader's own, what was measured or claimed and not calculated would stay as it is. */
function* gaugeFindings(draft: Draft, name: string, hasLines: boolean): Generator<Diagnostic> {
  const { swatch, finished } = draft.facts.facts
  const at = draft.facts.locate('reader', name)
  if (!hasLines) yield diagnose('reader-gauge-lines', at, {})
  const repeats = Object.values(swatch).flatMap((each) => Object.keys(each.repeats ?? {}))
  const claims = Object.entries(finished).flatMap(([label, formula]) => (typeof formula === 'string' ? [] : [label]))
  const unblocked = Object.values(swatch).some((each) => each.unblocked !== undefined)
  const fixed = [
    ...(unblocked ? ['The gauge before blocking'] : []),
    ...repeats.map((each) => `The measured repeat “${each}”`),
    ...claims.map((each) => `The claimed measure “${each}”`),
  ]
  for (const what of fixed) yield diagnose('reader-gauge-fixed', at, { what })
}
