import type { ElementContent } from 'hast'
import { h } from 'hastscript'
import { placeOf } from '../../diagnostic/index.ts'
import type { LedgerRow } from '../../rows/ledger.ts'
import type { Proofed } from '../text.ts'
import type { EditorLink } from './place.ts'
import { rowAnchor } from './place.ts'

function shown(count: number | null | undefined): string {
  return count === null || count === undefined ? '–' : String(count)
}

/** What a row makes of a kind that it states; null where it states a kind that was not counted. */
function worked(row: LedgerRow, kind: string, size: number): number | null {
  return (kind === 'total' ? row.total : row.counts[kind])?.[size] ?? null
}

/** One line of the table for each kind that a row states, or one for its total. */
function kindsOf(row: LedgerRow): readonly string[] {
  const kinds = Object.keys(row.stated ?? {})
  return kinds.length > 0 ? kinds : ['total']
}

function cell(row: LedgerRow, kind: string, size: number): ElementContent {
  const made = worked(row, kind, size)
  const said = row.stated?.[kind]?.[size] ?? null
  if (said === null || made === null || said === made) return h('td', shown(made))
  return h('td', { className: ['differs'] }, [h('span', `stated ${said}`), h('br'), h('strong', `≠ worked ${made}`)])
}

function verdict({ status, reason, agrees }: LedgerRow): string {
  if (status !== 'worked') return `${status === 'unread' ? 'not read' : 'not worked'}: ${reason ?? ''}`
  return agrees === null ? '' : agrees ? 'as stated' : 'differs'
}

interface Around {
  readonly proofed: Proofed
  readonly editor: EditorLink
  /** Rows to which findings can link: the first of each passage. */
  readonly firsts: ReadonlySet<LedgerRow>
}

function rowLabel(row: LedgerRow, { proofed, editor, firsts }: Around): ElementContent {
  const { line } = placeOf(proofed.source, row.at.start)
  const href = editor(line)
  const words = row.label ?? `line ${line}`
  const side = row.side === null ? '' : ` (${row.side})`
  const spans = kindsOf(row).length
  const own = firsts.has(row) ? { id: rowAnchor(row) } : {}
  return h('th', { scope: 'row', rowSpan: spans, ...own }, [href === null ? words : h('a', { href }, words), side])
}

function rowLines(row: LedgerRow, sizes: readonly string[], around: Around): readonly ElementContent[] {
  return kindsOf(row).map((kind, index, kinds) => {
    const cells = sizes.map((_, size) => cell(row, kind, size))
    const noun = kind === 'total' ? '' : kind
    const lead = index === 0 ? [rowLabel(row, around)] : []
    const last = index === 0 ? [h('td', { className: ['verdict'], rowSpan: kinds.length }, verdict(row))] : []
    return h('tr', { className: row.agrees === false ? ['wrong'] : [] }, [...lead, ...cells, h('td', noun), ...last])
  })
}

function pieceTable(piece: string, rows: readonly LedgerRow[], around: Around): ElementContent {
  const sizes = around.proofed.pattern?.sizes ?? []
  const head = ['Row', ...sizes, 'of', 'Check'].map((text) => h('th', { scope: 'col' }, text))
  return h('div', { className: ['wide'], role: 'region', ariaLabel: `Rows of ${piece}`, tabIndex: 0 }, [
    h('table', [
      h('caption', piece === '' ? 'Rows' : piece),
      h('thead', h('tr', head)),
      h(
        'tbody',
        rows.flatMap((row) => rowLines(row, sizes, around)),
      ),
    ]),
  ])
}

/** Every row with one column a size: what is stated and what is worked, where they differ by word and sign too. */
export function rowsSection(proofed: Proofed, editor: EditorLink): ElementContent {
  const rows = proofed.pattern?.rows ?? []
  const firsts = new Map<number, LedgerRow>()
  for (const row of rows) if (!firsts.has(row.at.start)) firsts.set(row.at.start, row)
  const around: Around = { proofed, editor, firsts: new Set(firsts.values()) }
  const pieces = [...new Set(rows.map(({ piece }) => piece))]
  return h('section', { id: 'rows' }, [
    h('h2', 'Rows'),
    ...(rows.length === 0 ? [h('p', 'No row was found in this draft.')] : []),
    ...pieces.map((piece) =>
      pieceTable(
        piece,
        rows.filter((row) => row.piece === piece),
        around,
      ),
    ),
  ])
}
