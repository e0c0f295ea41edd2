import type { Settings } from '../rows/written.ts'
import type { Draft } from './draft.ts'
import type { Graded } from './grade.ts'

/** What the row reader must know of a draft beside its text. */
export function rowSettings(draft: Draft, { environment }: Graded): Settings {
  const { sizes, terms } = draft.facts.facts
  const found = environment.gauge(null)
  const perCentimetre = found.kind === 'found' ? found.gauge.rows?.valueOf() : undefined
  return {
    sizes,
    terms,
    rowsIn: (centimetres) => (perCentimetre === undefined ? null : centimetres * perCentimetre),
  }
}
