import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Pattern, ValueNode, YarnLine } from '../../pattern/pattern.ts'
import { segmentElements } from '../segments.ts'
import { noStops } from '../stops.ts'

/** Yarn with the amount for each size, hooks, and what else is needed. */
export function materials({ materials: { yarn, yarnNote, hooks, notions } }: Pattern): Element[] {
  const said = (name: string, words: string | null): Element[] =>
    words === null || words === '' ? [] : [fact(name, [{ type: 'text', value: words }])]
  return [
    h('dl', { className: ['facts'] }, [
      ...yarn.map((line) => fact(yarn.length > 1 ? `Yarn (${line.as})` : 'Yarn', yarnLine(line))),
      ...said('Instead', yarnNote),
      ...said(hooks.length > 1 ? 'Hooks' : 'Hook', hooks.join(', ')),
      ...said('Also', notions.join(', ')),
    ]),
  ]
}

function fact(name: string, description: readonly ElementContent[]): Element {
  return h('div', [h('dt', name), h('dd', [...description])])
}

function yarnLine({ description, amount }: YarnLine): ElementContent[] {
  const words = segmentElements(description, noStops)
  return amount === null ? words : [...words, h('p', { className: ['amount'] }, ['About ', shown(amount)])]
}

function shown({ id, segments }: ValueNode): Element {
  return h('span', { className: ['value'], dataV: id }, segmentElements(segments, noStops))
}
