import type { UnknownWord } from '../rows/unknown.ts'
import type { ProofDocument, ProofRow } from './document.ts'
import { plural } from './text.ts'

function rowOf(row: ProofRow): string {
  const piece = row.piece === '' ? '' : ` of ${row.piece}`
  return `${row.label ?? 'a row without a label'}${piece} (line ${row.line})`
}

/** `wibble (nearest known: double)` */
function wordOf({ word, nearest }: UnknownWord): string {
  return nearest === null ? word : `${word} (nearest known: ${nearest})`
}

/** What has been read and worked and what has not, and which words stopped the reader; empty where all has been worked. */
export function coverageText(proof: ProofDocument, unknown: readonly UnknownWord[]): string {
  const unread = proof.rows.filter((row) => row.status === 'unread')
  const waiting = proof.rows.filter((row) => row.status === 'not-worked').length
  if (unread.length + waiting === 0) return ''
  const worked = proof.rows.length - unread.length - waiting
  const lines = [
    `Checked: ${worked} of ${plural(proof.rows.length, 'row')}.`,
    ...unread.map((row) => `  not read: ${rowOf(row)}. ${row.reason ?? ''}`.trimEnd()),
    ...(waiting > 0 ? [`  not worked, because of a row before: ${plural(waiting, 'row')}`] : []),
    ...(unknown.length > 0 ? [`  words not known: ${unknown.map(wordOf).join(', ')}`] : []),
  ]
  return lines.join('\n')
}
