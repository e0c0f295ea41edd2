import type { Diagnostic, Source } from '../../diagnostic/index.ts'
import { placeOf } from '../../diagnostic/index.ts'
import type { LedgerRow } from '../../rows/ledger.ts'
import { comparedText } from './compared.ts'
import { frame } from './frame.ts'
import type { Group, Told } from './groups.ts'
import { groupsOf, titleOf, within } from './groups.ts'
import { plural, wrapped } from './lines.ts'
import type { Paint } from './paint.ts'

/** A draft's findings, and what is needed to show them where they are. */
export interface Found {
  readonly source: Source
  readonly sizes: readonly string[]
  readonly rows: readonly LedgerRow[]
  readonly diagnostics: readonly Diagnostic[]
}

/** Further places of the same finding that are named. */
const mostPlaces = 12

function sizesText({ sizes }: Diagnostic, names: readonly string[]): string {
  if (sizes.length === 0 || names.length === 1) return ''
  return sizes.length === names.length ? 'every size' : sizes.flatMap((size) => names[size] ?? []).join(', ')
}

function placeText({ name }: Source, { line, column }: { line: number; column: number }): string {
  return `${name}:${line}:${column}`
}

function furtherText(source: Source, further: readonly Diagnostic[]): string | null {
  if (further.length === 0) return null
  const lines = [...new Set(further.map(({ at }) => placeOf(source, at.start).line))]
  const named = lines.slice(0, mostPlaces).join(', ')
  const more = lines.length > mostPlaces ? ` and ${lines.length - mostPlaces} more` : ''
  return wrapped(`The same on line ${named}${more}.`, 4)
}

function toldText(told: Told, row: LedgerRow | null, { source, sizes: names }: Found, paint: Paint): string {
  const { first, further } = told
  const place = placeText(source, placeOf(source, first.at.start))
  const sizes = sizesText(first, names)
  const compared = first.code === 'count-mismatch' && row !== null ? comparedText(row, names, paint) : ''
  const related = first.related.map(({ at, note }) => wrapped(`${note} (line ${placeOf(source, at.start).line})`, 4))
  const parts = [
    `${paint.faint(place)}  ${paint.severity(first.severity, first.severity)}  ${first.code}`,
    sizes === '' ? null : wrapped(`for ${sizes}`, 4),
    frame(source, first.at, paint),
    wrapped(first.message, 4),
    compared === '' ? null : compared,
    first.hint === undefined ? null : wrapped(first.hint, 4),
    ...related,
    furtherText(source, further),
  ]
  return parts.filter((part) => part !== null).join('\n')
}

function groupText(group: Group, found: Found, paint: Paint): string {
  const title = titleOf(group)
  const told = group.told.map((each) => toldText(each, group.row, found, paint))
  return [...(title === null ? [] : [paint.strong(title)]), ...told].join('\n')
}

function leftOutText(leftOut: readonly Told[]): string {
  const byCode = new Map<string, number>()
  for (const { first, further } of leftOut) byCode.set(first.code, (byCode.get(first.code) ?? 0) + 1 + further.length)
  const total = [...byCode.values()].reduce((sum, count) => sum + count, 0)
  const kinds = [...byCode].map(([code, count]) => `${count} ${code}`).join(', ')
  return wrapped(`And ${plural(total, 'finding')} more, not shown here: ${kinds}.`, 0)
}

/** The findings of a draft for a person, in the order of the draft; empty where there are none. */
export function findingsText(found: Found, paint: Paint): string {
  const { shown, leftOut } = within(groupsOf(found.source, found.rows, found.diagnostics))
  const groups = shown.map((group) => groupText(group, found, paint))
  return [...groups, ...(leftOut.length === 0 ? [] : [leftOutText(leftOut)])].join('\n\n')
}
