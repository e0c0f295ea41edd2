import type { Source } from '../../diagnostic/index.ts'
import { placeOf } from '../../diagnostic/index.ts'
import type { LedgerRow } from '../../rows/ledger.ts'
import type { UnknownWord } from '../../rows/unknown.ts'
import { plural, wrapped } from './lines.ts'

function rowText(source: Source, { label, piece, at, reason }: LedgerRow): string {
  const of = piece === '' ? '' : ` of ${piece}`
  const where = `${label ?? 'a row without a label'}${of} (line ${placeOf(source, at.start).line})`
  return wrapped(`not read: ${where}. ${reason ?? ''}`.trimEnd(), 2, 2)
}

/** `wibble (nearest known: double)` */
function wordText({ word, nearest }: UnknownWord): string {
  return nearest === null ? word : `${word} (nearest known: ${nearest})`
}

/** What has been read and worked and what has not, and which words stopped the reader; empty where all has been worked. */
export function coverageText(source: Source, rows: readonly LedgerRow[], unknown: readonly UnknownWord[]): string {
  const unread = rows.filter((row) => row.status === 'unread')
  const waiting = rows.filter((row) => row.status === 'not-worked').length
  if (unread.length + waiting === 0) return ''
  const worked = rows.length - unread.length - waiting
  const lines = [
    `Checked: ${worked} of ${plural(rows.length, 'row')}.`,
    ...unread.map((row) => rowText(source, row)),
    ...(waiting > 0 ? [`  not worked, because of a row before: ${plural(waiting, 'row')}`] : []),
    ...(unknown.length > 0 ? [wrapped(`words not known: ${unknown.map(wordText).join(', ')}`, 2, 2)] : []),
  ]
  return lines.join('\n')
}
