import type { Element } from 'hast'
import { h } from 'hastscript'
import type { MeasureLine, Pattern } from '../../pattern/pattern.ts'
import { segmentElements } from '../segments.ts'
import { sizeClass } from '../sizes.ts'
import { noStops } from '../stops.ts'

/** What each size fits, and the finished measures. */
export function sizesTable({ sizes, fits, finished }: Pattern): Element[] {
  const names = sizes.map((name, size) => h('th', { scope: 'col', className: [...sizeClass(size)] }, name))
  const groups = [fits, finished].filter((lines) => lines.length > 0)
  return [
    h('table', { className: ['sizes-table'] }, [
      h('thead', h('tr', [h('th', { scope: 'col' }, 'Size'), ...names])),
      ...groups.map((lines) => h('tbody', lines.map(tableLine))),
    ]),
  ]
}

function tableLine({ label, value, cells }: MeasureLine): Element {
  const shown = cells.map((cell, size) =>
    h('td', { className: [...sizeClass(size)], dataCell: `${value.id}/${size}` }, segmentElements(cell, noStops)),
  )
  return h('tr', [h('th', { scope: 'row' }, label), ...shown])
}
