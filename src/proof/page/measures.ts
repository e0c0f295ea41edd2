import type { ElementContent } from 'hast'
import { h } from 'hastscript'
import { textForAll } from '../../measure/index.ts'
import type { Pattern } from '../../pattern/pattern.ts'

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

/** Sizes and finished measures, the values of the formulas, and yarn: one column a size. */
export function measuresSection({ sizes, fits, finished, values, yarn }: Pattern): ElementContent {
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
    table(
      'Sizes and finished measures',
      head('Measure'),
      [...fits, ...finished].map(({ label, cells }) => [label, ...cells.map(textForAll)]),
    ),
    table('Yarn', head('Yarn'), yarnLines),
    table('Values of the formulas', head('Name'), valueLines),
  ])
}
