import stringWidth from 'string-width'
import type { PerSize } from '../../measure/value.ts'
import type { LedgerRow } from '../../rows/ledger.ts'
import { paperWidth } from './lines.ts'
import type { Paint } from './paint.ts'

/** What a row states of one kind of stitch beside what its steps make. */
interface Compared {
  readonly kind: string
  readonly stated: PerSize<number | null>
  readonly worked: PerSize<number | null>
}

function workedOf({ total, counts }: LedgerRow, kind: string): PerSize<number | null> | null {
  return kind === 'total' ? total : (counts[kind] ?? null)
}

function differing(row: LedgerRow): readonly Compared[] {
  return Object.entries(row.stated ?? {}).flatMap(([kind, stated]) => {
    const worked = workedOf(row, kind)
    const differs = stated.some((count, size) => count !== null && count !== worked?.[size])
    return worked === null || !differs ? [] : [{ kind, stated, worked }]
  })
}

function shown(count: number | null | undefined): string {
  return count === null || count === undefined ? '–' : String(count)
}

const lead = 'stated  '
const indent = '    '

/** Columns for as many sizes as fit on the paper side by side. */
function* strips(names: readonly string[], widths: readonly number[], noun: number): Generator<readonly number[]> {
  const room = paperWidth - indent.length - lead.length - noun
  let strip: number[] = []
  let used = 0
  for (const size of names.keys()) {
    const width = (widths[size] ?? 0) + 2
    if (strip.length > 0 && used + width > room) {
      yield strip
      strip = []
      used = 0
    }
    strip.push(size)
    used += width
  }
  if (strip.length > 0) yield strip
}

function padded(text: string, width: number): string {
  return ' '.repeat(Math.max(0, width - stringWidth(text))) + text
}

function tableOf(compared: Compared, names: readonly string[], paint: Paint): readonly string[] {
  const { kind, stated, worked } = compared
  const noun = kind === 'total' ? '' : `  ${kind}`
  const widths = names.map((name, size) =>
    Math.max(stringWidth(name), shown(stated[size]).length, shown(worked[size]).length + 1),
  )
  const line = (word: string, strip: readonly number[], cell: (size: number) => string, after = ''): string =>
    `${indent}${word.padEnd(lead.length)}${strip.map((size) => padded(cell(size), widths[size] ?? 0)).join('  ')}${after}`
  const marked = (size: number): string =>
    stated[size] === null || stated[size] === worked[size] ? shown(worked[size]) : `≠${shown(worked[size])}`
  return [...strips(names, widths, noun.length)].flatMap((strip) => [
    paint.faint(line('', strip, (size) => names[size] ?? '')),
    line('stated', strip, (size) => shown(stated[size]), noun),
    line('worked', strip, marked, noun),
  ])
}

/** Stated against worked, size by size, for each kind of stitch in which a row differs; empty where it does not. */
export function comparedText(row: LedgerRow, names: readonly string[], paint: Paint): string {
  return differing(row)
    .flatMap((compared) => tableOf(compared, names, paint))
    .join('\n')
}
