import { workRows } from '../../src/rows/index.ts'
import { sections } from '../rows/draft.ts'
import { median, remarkTime } from './draft.ts'

const sizes = Array.from({ length: 12 }, (_, index) => `Size ${index + 1}`)

function bySize(numbers: readonly number[]): string {
  const [first = 0, ...others] = numbers
  return `${first} (${others.join(', ')})`
}

/** 200 rows in 12 sizes, about half a million stitches: plain rows, mesh, rows into spaces, decreases beside increases. */
function longDraft(): string {
  const counts = sizes.map((_, index) => 156 + 12 * index)
  const stated = bySize(counts)
  const again = bySize(counts.map((count) => count / 6 - 1))
  const lines = [
    '## Throw',
    `Foundation: Ch ${bySize(counts.map((count) => count + 1))}.`,
    `Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (${stated} sc)`,
  ]
  for (let row = 2; row < 200; row += 4) {
    lines.push(
      `Row ${row}: Ch 1, sc in each st across, turn. (${stated} sc)`,
      `Row ${row + 1}: Ch 1, *sc in next 2 sts, ch 1, sk 1 st; rep from * across, turn.`,
      `Row ${row + 2}: Ch 1, *sc in next ch-1 sp, sc in next 2 sts; rep from * across, turn. (${stated} sc)`,
      `Row ${row + 3}: Ch 1, *sc2tog, 2 sc in next st, sc in next 3 sts; rep from * ${again} more times, turn.`,
    )
  }
  return lines.join('\n')
}

export interface RowsRatio {
  readonly stitches: number
  readonly milliseconds: number
  readonly remark: number
}

/** Reading and working the rows of a 200-row, 12-size draft, beside remark's parse and HTML of the same text. */
export function rowsRatio(): RowsRatio {
  const text = longDraft()
  const cut = sections(text)
  const settings = { sizes, terms: 'us' as const, rowsIn: () => null }
  const { value, diagnostics } = workRows(cut, settings)
  if (diagnostics.length > 0) throw new Error(diagnostics[0]?.message)
  const stitches = value.rows.reduce(
    (sum, row) => sum + row.total.reduce<number>((all, count) => all + (count ?? 0), 0),
    0,
  )
  return { stitches, milliseconds: median(() => workRows(cut, settings)), remark: remarkTime(text) }
}
