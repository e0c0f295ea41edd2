import type { Diagnostic } from '../../diagnostic/index.ts'
import type { Environment } from '../../formula/index.ts'
import type { Ledger } from '../../rows/ledger.ts'
import type { Draft } from '../draft.ts'
import { hookFindings } from './hook-words.ts'
import { rangeFindings } from './published-ranges.ts'
import { categoryFindings } from './yarn-category.ts'

/** Hooks, yarns and gauge against each other and against what is published of them. */
export function* materialFindings(draft: Draft, environment: Environment, ledger: Ledger): Generator<Diagnostic> {
  yield* hookFindings(draft)
  yield* categoryFindings(draft)
  yield* rangeFindings(draft, environment, ledger)
}
