import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { ReadRow } from '../cut.ts'
import type { Counted } from '../stated/item.ts'
import type { RowText } from './source.ts'
import { spanOf } from './source.ts'

function kindOf(of: Counted): string | null {
  if (of.kind === 'key') return of.key
  return of.kind === 'special' || of.kind === 'named' ? `${of.kind} ${of.name}` : null
}

/** `24 dc, 4 ch-1 sps, 4 ch-1 sps`: a kind that stands twice in one count. */
export function countedTwiceFindings({ stated, label }: ReadRow, sizes: number): readonly Diagnostic[] {
  // `40 sc, 44 sc, 48 sc` is one count for each of three sizes.
  if (stated === null || label === null || (sizes > 1 && stated.items.length === sizes)) return []
  const seen = new Set<string>()
  for (const { of, shown } of stated.items) {
    const kind = kindOf(of)
    if (kind === null) continue
    if (seen.has(kind)) return [diagnose('kind-counted-twice', stated.at, { kind: shown })]
    seen.add(kind)
  }
  return []
}

const atEndOf = /\b(?:end of|after) (?:rows?|rnds?|rounds?)\.?\s*(\d+)\b/gi

/** `12 sc at end of Row 8` in a row that is, or ends on, another: the row's count names it. */
export function countedRowFindings({ label, stated }: ReadRow, row: RowText): readonly Diagnostic[] {
  if (label?.numbers.kind !== 'list' || stated === null) return []
  const own = new Set(label.numbers.items.flat())
  const last = label.numbers.items.at(-1)?.[0] ?? null
  for (const match of row.text.matchAll(atEndOf)) {
    const at = spanOf(row, match)
    const inCount = stated.at.start <= at.start && at.end <= stated.at.end
    if (inCount && last !== null && !own.has(Number(match[1]))) {
      return [diagnose('count-of-other-row', at, { number: Number(match[1]), last })]
    }
  }
  return []
}
