import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import type { OutlineEntry } from '../outline.ts'
import { segmentElements } from '../segments.ts'
import { noStops } from '../stops.ts'

/** The items of a list of contents; a heading may have numbers. */
export function contentsHtml(entries: readonly OutlineEntry[]): string {
  return toHtml(entries.map(({ id, text }) => h('li', h('a', { href: `#${id}` }, segmentElements(text, noStops)))))
}
