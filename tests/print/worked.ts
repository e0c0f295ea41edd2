import { readDraft } from '../../plugins/read-draft.ts'
import type { Pattern } from '../../src/pattern/pattern.ts'

/** The pattern of a draft's body, for sizes S, M and L; it throws where the draft has faults. */
export function workedPattern(body: string, facts = 'title: Mat\nsizes: [S, M, L]'): Pattern {
  const { outcome } = readDraft('mat.md', 'mat', `---\n${facts}\n---\n${body}\n`)
  const faults = outcome.diagnostics.filter(({ severity }) => severity === 'error')
  if (outcome.value === null || faults.length > 0) throw new Error(faults.map(({ message }) => message).join('\n'))
  return outcome.value
}
