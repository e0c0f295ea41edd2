import type { Element } from 'hast'
import { h } from 'hastscript'
import type { Pattern } from '../../pattern/pattern.ts'
import { segmentElements } from '../segments.ts'
import { noStops } from '../stops.ts'

/** The gauge of each swatch. */
export function gauge({ gauge: lines }: Pattern): Element[] {
  return lines.map(({ name, text }) =>
    h('p', [...(name === null ? [] : [h('strong', `${name}: `)]), ...segmentElements(text, noStops)]),
  )
}
