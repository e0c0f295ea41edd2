import type { PerSize } from '../../measure/value.ts'
import type { Measure } from '../../pattern/pattern.ts'
import { amountText, isOff, offText } from './amounts.ts'
import { wrapped } from './lines.ts'
import type { Paint } from './paint.ts'
import { inColumns } from './row-runs.ts'

/** The longest of `made`, `to be` and `+20 %`. */
const widest = 5

interface Line {
  readonly label: string
  readonly what: string
  readonly amounts: string
}

type AmountsText = (bySize: PerSize<number | null>, text?: typeof amountText) => string

/** What was to be, what is made and how far it is off; one line where there is no difference to be seen. */
function madeLines({ label, unit, target, made, difference }: Measure, amounts: AmountsText): readonly Line[] {
  const own = { label, what: 'made', amounts: amounts(made) }
  if (target === null || difference === null) return [own]
  if (!difference.some((each) => isOff(each, unit))) return [{ ...own, amounts: `${own.amounts}, as it was to be` }]
  return [
    own,
    { label: '', what: 'to be', amounts: amounts(target) },
    { label: '', what: 'off', amounts: amounts(difference, offText) },
  ]
}

function headLines({ head }: Measure, amounts: AmountsText): readonly Line[] {
  if (head === null) return []
  return [
    { label: '', what: `+${head.stretch} %`, amounts: `${amounts(head.stretched)}, stretched` },
    { label: '', what: 'head', amounts: amounts(head.around) },
  ]
}

function linesOf(measure: Measure): readonly Line[] {
  const { unit } = measure
  const amounts: AmountsText = (bySize, text = amountText) =>
    `${inColumns(bySize.map((each) => text(each, unit)))}${unit === null ? '' : ` ${unit}`}`
  return [...madeLines(measure, amounts), ...headLines(measure, amounts)]
}

const mostLabel = 24

/** The finished measures, each beside what it was to be; empty where there are none. */
export function measureLines(measures: readonly Measure[], paint: Paint): string {
  if (measures.length === 0) return ''
  const lines = measures.flatMap(linesOf)
  const labels = lines.map(({ label }) => label.length).filter((length) => length <= mostLabel)
  const wide = Math.max(0, ...labels)
  return [paint.strong('Finished measures'), ...lines.map((line) => printed(line, wide))].join('\n')
}

/** A label that is too long for its column stands on a line of its own. */
function printed({ label, what, amounts }: Line, wide: number): string {
  if (label.length > wide) return `${wrapped(label, 2, 2)}\n${printed({ label: '', what, amounts }, wide)}`
  const lead = `  ${label.padEnd(wide)}  ${what.padEnd(widest)}  `
  return lead + wrapped(amounts, lead.length).trimStart()
}
