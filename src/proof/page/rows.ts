import type { ElementContent } from 'hast'
import { h } from 'hastscript'
import { placeOf } from '../../diagnostic/index.ts'
import type { PerSize } from '../../measure/value.ts'
import type { Run } from '../report/row-runs.ts'
import { runsOf } from '../report/row-runs.ts'
import type { Proofed } from '../text.ts'
import type { Links } from './place.ts'
import { rowAnchor } from './place.ts'

/** What a row makes of one kind beside what it states, for each size. */
interface Line {
  /** As the table calls it: empty for stitches in all. */
  readonly noun: string
  readonly worked: PerSize<number | null>
  readonly stated: PerSize<number | null> | null
}

/** One line for each kind that a row states; one for its total, or the chains of a foundation, where it states none. */
function linesOf({ total, chains, worked, stated }: Run): readonly Line[] {
  const kinds = Object.entries(stated ?? {})
  if (kinds.length === 0) return [{ noun: chains === null ? '' : 'ch', worked: chains ?? total, stated: null }]
  return kinds.map(([kind, said]) => ({
    noun: kind === 'total' ? '' : kind,
    worked: worked[kind] ?? total.map(() => null),
    stated: said,
  }))
}

function shown(count: number | null): string {
  return count === null ? '–' : String(count)
}

function cell({ worked, stated }: Line, size: number): ElementContent {
  const made = worked[size] ?? null
  const said = stated?.[size] ?? null
  if (said === null || made === null || said === made) return h('td', shown(made))
  return h('td', { className: ['differs'] }, [h('span', `stated ${said}`), h('br'), h('strong', `≠ worked ${made}`)])
}

function verdict({ status, agrees, first: { reason } }: Run): string {
  if (status !== 'worked') return `${status === 'unread' ? 'not read' : 'not worked'}: ${reason ?? ''}`
  return agrees === null ? '' : agrees ? 'as stated' : 'differs'
}

interface Around {
  readonly proofed: Proofed
  readonly links: Links
  /** Lines to which findings can link: the first of each passage. */
  readonly firsts: ReadonlySet<Run>
}

function rowHead(run: Run, spans: number, { proofed, links, firsts }: Around): ElementContent {
  const { at, side } = run.first
  const { line } = placeOf(proofed.source, at.start)
  const href = links.editor(line)
  const words = run.label ?? `line ${line}`
  const own = firsts.has(run) ? { id: rowAnchor(run.first) } : {}
  return h('th', { scope: 'row', rowSpan: spans, ...own }, [
    href === null ? words : h('a', { href }, words),
    side === null ? '' : ` (${side})`,
  ])
}

function rowLines(run: Run, sizes: readonly string[], around: Around): readonly ElementContent[] {
  return linesOf(run).map((line, index, lines) =>
    h('tr', [
      ...(index === 0 ? [rowHead(run, lines.length, around)] : []),
      ...sizes.map((_, size) => cell(line, size)),
      h('td', { className: ['noun'] }, line.noun),
      ...(index === 0 ? [h('td', { className: ['verdict'], rowSpan: lines.length }, verdict(run))] : []),
    ]),
  )
}

function pieceTable(piece: string, runs: readonly Run[], around: Around): ElementContent {
  const sizes = around.proofed.pattern?.sizes ?? []
  const head = ['Row', ...sizes, 'of', 'Check'].map((text) => h('th', { scope: 'col' }, text))
  const name = piece === '' ? 'Rows' : piece
  return h('div', { className: ['wide'], role: 'region', ariaLabel: `Rows of ${name}`, tabIndex: 0 }, [
    h('table', { className: ['rows'] }, [
      h('caption', name),
      h('thead', h('tr', head)),
      h(
        'tbody',
        runs.flatMap((run) => rowLines(run, sizes, around)),
      ),
    ]),
  ])
}

/**
 * Every row with one column a size: what is stated and what is worked, where they differ by word and sign too. Rows of a
 * range that are alike share a line.
 */
export function rowsSection(proofed: Proofed, links: Links): ElementContent {
  const runs = runsOf(proofed.pattern?.rows ?? [])
  const firsts = new Map<number, Run>()
  for (const run of runs) if (!firsts.has(run.first.at.start)) firsts.set(run.first.at.start, run)
  const around: Around = { proofed, links, firsts: new Set(firsts.values()) }
  const pieces = [...new Set(runs.map(({ piece }) => piece))]
  return h('section', { id: 'rows' }, [
    h('h2', 'Rows'),
    ...(runs.length === 0 ? [h('p', 'No row was found in this draft.')] : []),
    ...pieces.map((piece) =>
      pieceTable(
        piece,
        runs.filter((run) => run.piece === piece),
        around,
      ),
    ),
  ])
}
