import type { Diagnostic, Outcome } from '../../diagnostic/index.ts'
import { type Means, type Worked, workPattern } from '../work.ts'
import type { Changes } from './changes.ts'
import { withOwnGauges } from './gauges.ts'

/** A pattern worked anew with what its reader has changed; what is found is found in the same places of the draft. */
export function rework(published: Worked, changes: Changes, means: Means): Outcome<Worked> {
  const draft = { ...withOwnGauges(published.draft, changes), own: { changes, published } }
  const diagnostics: Diagnostic[] = []
  return { value: workPattern(draft, means, diagnostics), diagnostics }
}
