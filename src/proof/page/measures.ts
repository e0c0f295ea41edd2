import type { ElementContent } from 'hast'
import { h } from 'hastscript'
import { type PerSize, textForAll } from '../../measure/index.ts'
import type { Measure, MeasureLine, Pattern } from '../../pattern/pattern.ts'
import { amountText, offText } from '../report/amounts.ts'

function table(caption: string, head: readonly string[], lines: readonly (readonly string[])[]): ElementContent {
  if (lines.length === 0) return h('p', `${caption}: none.`)
  return h('div', { className: ['wide'], role: 'region', ariaLabel: caption, tabIndex: 0 }, [
    h('table', [
      h('caption', caption),
      h(
        'thead',
        h(
          'tr',
          head.map((text) => h('th', { scope: 'col' }, text)),
        ),
      ),
      h(
        'tbody',
        lines.map(([first = '', ...cells]) =>
          h('tr', [h('th', { scope: 'row' }, first), ...cells.map((text) => h('td', text))]),
        ),
      ),
    ]),
  ])
}

function printedLine({ label, cells }: MeasureLine): readonly string[] {
  return [label, ...cells.map(textForAll)]
}

/** What a finished measure was to be and how far it is off; of a closed edge the heads that it must pass. */
function besideIt({ label, unit, target, difference, head }: Measure): readonly (readonly string[])[] {
  const line = (what: string, bySize: PerSize<number | null>, text = amountText) => [
    `${label}, ${what}${unit === null ? '' : ` (${unit})`}`,
    ...bySize.map((each) => text(each, unit)),
  ]
  return [
    ...(target === null ? [] : [line('to be', target)]),
    ...(difference === null ? [] : [line('off', difference, offText)]),
    ...(head === null
      ? []
      : [line(`stretched by ${head.stretch} %`, head.stretched), line('head to pass', head.around)]),
  ]
}

/** Sizes and finished measures, the values of the formulas, and yarn: one column a size. */
export function measuresSection({ sizes, fits, finished, measures, values, yarn }: Pattern): ElementContent {
  const head = (first: string): readonly string[] => [first, ...sizes]
  const cell = (value: unknown): string => (value === null || value === undefined ? '–' : String(value))
  const valueLines = Object.entries(values).map(([name, { unit, bySize }]) => [
    unit === null ? name : `${name} (${unit})`,
    ...sizes.map((_, size) => cell(bySize[size])),
  ])
  const yarnLines = Object.entries(yarn).flatMap(([name, use]) =>
    [
      [`${name}, grams`, use.grams] as const,
      [`${name}, metres`, use.metres] as const,
      [`${name}, skeins`, use.skeins] as const,
    ].flatMap(([label, bySize]) => (bySize === null ? [] : [[label, ...bySize.map(cell)]])),
  )
  return h('section', { id: 'measures' }, [
    h('h2', 'Measures, numbers and yarn'),
    table('Sizes and finished measures', head('Measure'), [
      ...fits.map(printedLine),
      ...finished.flatMap((line) => [
        printedLine(line),
        ...measures.filter(({ label }) => label === line.label).flatMap(besideIt),
      ]),
    ]),
    table('Yarn', head('Yarn'), yarnLines),
    table('Values of the formulas', head('Name'), valueLines),
  ])
}
