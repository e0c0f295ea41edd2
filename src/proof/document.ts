import type { Source } from '../diagnostic/index.ts'
import { type Diagnostic, placeOf } from '../diagnostic/index.ts'
import type { Measure, NamedValue, Pattern, YarnUse } from '../pattern/pattern.ts'
import type { LedgerRow } from '../rows/ledger.ts'
import { type Finding, findingsOf } from './finding.ts'

/** The proof of one draft as scripts read it (`--json`); `proof.schema.json` beside this file describes it. */
export interface ProofDocument {
  readonly draft: string
  readonly sizes: readonly string[]
  readonly values: Readonly<Record<string, NamedValue>>
  readonly finished: Readonly<Record<string, ProofMeasure>>
  readonly rows: readonly ProofRow[]
  readonly yarn: Readonly<Record<string, YarnUse>>
  readonly diagnostics: readonly Finding[]
}

/** By its label. */
export type ProofMeasure = Omit<Measure, 'label'>

export interface ProofRow extends Omit<LedgerRow, 'at' | 'left' | 'names' | 'besides'> {
  readonly line: number
}

/** `pattern` is null when the front matter could not be used; the findings then say why. */
export function proofDocument(
  source: Source,
  pattern: Pattern | null,
  diagnostics: readonly Diagnostic[],
): ProofDocument {
  const sizes = pattern?.sizes ?? []
  return {
    draft: source.name,
    sizes,
    values: pattern?.values ?? {},
    finished: Object.fromEntries((pattern?.measures ?? []).map(({ label, ...measure }) => [label, measure])),
    rows: (pattern?.rows ?? []).map((row) => proofRow(row, source)),
    yarn: pattern?.yarn ?? {},
    diagnostics: findingsOf(source, sizes, diagnostics),
  }
}

function proofRow({ at, left: _, names: __, besides: ___, ...row }: LedgerRow, source: Source): ProofRow {
  const { piece, label, side, ...rest } = row
  return { piece, label, side, line: placeOf(source, at.start).line, ...rest }
}
