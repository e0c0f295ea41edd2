import type { LedgerRow } from '../../rows/ledger.ts'
import { paperWidth, wrapped } from './lines.ts'
import type { Paint } from './paint.ts'
import type { Run } from './row-runs.ts'
import { column, runsOf } from './row-runs.ts'

function workedText({ status, total, chains }: Run): string {
  if (status === 'worked' && chains !== null) return `${column(chains)} ch`
  return status === 'worked' ? column(total) : status === 'unread' ? 'not read' : 'not worked'
}

function statedText({ stated, agrees }: Run, paint: Paint): string {
  if (stated === null) return ''
  if (agrees === true) return 'as stated'
  const counts = Object.entries(stated).map(
    ([kind, bySize]) => `${column(bySize)}${kind === 'total' ? '' : ` ${kind}`}`,
  )
  const said = `stated ${counts.join(', ')}`
  return agrees === null ? said : `≠ ${paint.severity('error', said)}`
}

/** The widest column that still leaves room beside it. */
const mostWorked = 44
const mostLabel = 20

function widest(texts: readonly string[], most: number): number {
  return Math.max(0, ...texts.map((text) => text.length).filter((length) => length <= most))
}

function lineOf(run: Run, label: number, worked: number, paint: Paint): string {
  const name = run.label ?? '·'
  const count = workedText(run)
  const said = statedText(run, paint)
  const lead = `  ${name.padEnd(label)}  `
  const whole = `${lead}${count.padEnd(worked)}  ${said}`.trimEnd()
  if (whole.length <= paperWidth && name.length <= label) return whole
  const first = name.length <= label ? wrapped(`${lead.trimStart()}${count}`, 2, label + 2) : wrapped(name, 2, 2)
  const rest = name.length <= label ? said : `${count}  ${said}`
  return rest.trim() === '' ? first : `${first}\n${wrapped(rest.trimEnd(), label + 4, 2)}`
}

/** What each row makes, piece by piece, beside what it states; rows of a range that are alike share a line. */
export function rowTable(rows: readonly LedgerRow[], paint: Paint): string {
  const runs = runsOf(rows)
  const label = widest(
    runs.map((run) => run.label ?? '·'),
    mostLabel,
  )
  const worked = widest(runs.map(workedText), mostWorked)
  const pieces = [...new Set(runs.map(({ piece }) => piece))]
  return pieces
    .map((piece) => {
      const own = runs.filter((run) => run.piece === piece)
      return [paint.strong(piece === '' ? 'Rows' : piece), ...own.map((run) => lineOf(run, label, worked, paint))].join(
        '\n',
      )
    })
    .join('\n\n')
}
