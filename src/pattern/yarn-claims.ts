import type { Diagnostic } from '../diagnostic/index.ts'
import { diagnose, nearestTo } from '../diagnostic/index.ts'
import type { Ledger } from '../rows/ledger.ts'
import { type Claim, readRowNumbers, samePiece } from '../yarn/claims.ts'
import type { Draft } from './draft.ts'

/** What `pieces` and `rows` beside the yarns say; names and numbers that are none are reported and left out. */
export function claimsOf(draft: Draft, { rows }: Ledger, findings: Diagnostic[]): Claim[] {
  const { facts, locate } = draft.facts
  const known = [...new Set(rows.map(({ piece }) => piece))]
  return facts.yarn.flatMap((own, yarn) => {
    const pieces = (own.pieces ?? []).map((piece, index): Written => ({ piece, path: ['yarn', yarn, 'pieces', index] }))
    const parts = Object.entries(own.rows ?? {}).map(
      ([piece, text]): Written => ({ piece, text, path: ['yarn', yarn, 'rows', piece] }),
    )
    return [...pieces, ...parts].flatMap(({ piece, text, path }): Claim[] => {
      const at = locate(...path)
      if (!known.some((name) => samePiece(name, piece))) {
        findings.push(diagnose('yarn-piece-unknown', at, { piece, nearest: nearestTo(piece, known) }))
        return []
      }
      if (text === undefined) return [{ yarn, piece, rows: null }]
      const numbers = readRowNumbers(text)
      if (numbers === null) findings.push(diagnose('yarn-rows-unreadable', at, { text }))
      return numbers === null ? [] : [{ yarn, piece, rows: numbers }]
    })
  })
}

interface Written {
  readonly piece: string
  readonly text?: string
  readonly path: readonly (string | number)[]
}
