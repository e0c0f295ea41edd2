import type { ElementContent } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import type { Segment, Term } from '../measure/segment.ts'
import { readingClass, segmentClass, systemClass, termClass } from './sizes.ts'
import { noStops, type Stops } from './stops.ts'

/** Printed pieces as elements that the page's switches work by: sizes, systems of measures, terms. */
export function segmentElements(segments: readonly Segment[], stops: Stops): ElementContent[] {
  return runsOfSystem(segments).flatMap(({ system, run }) => {
    const content = run.flatMap((segment) => segmentElement(segment, stops))
    return system === undefined ? content : [h('span', { className: [systemClass(system)] }, content)]
  })
}

/** The same as HTML, beside the text: there the keyboard stops at none of them. */
export function segmentsHtml(segments: readonly Segment[]): string {
  return toHtml(segmentElements(segments, noStops))
}

interface Run {
  readonly system: Segment['system']
  readonly run: Segment[]
}

function runsOfSystem(segments: readonly Segment[]): readonly Run[] {
  const runs: Run[] = []
  for (const segment of segments) {
    const last = runs.at(-1)
    if (last !== undefined && last.system === segment.system) last.run.push(segment)
    else runs.push({ system: segment.system, run: [segment] })
  }
  return runs
}

function segmentElement({ text, show, term }: Segment, stops: Stops): ElementContent[] {
  const className = segmentClass(show)
  const content = term === undefined ? lines(text) : termElements(text, term, stops)
  if (className === null) return content
  // Brackets and commas between sizes are not heard: each number has its size with it.
  const silent = show === 'columns' && !/\p{L}/u.test(text) ? { ariaHidden: 'true' } : {}
  return [h('span', { className: [...className], ...silent }, content)]
}

/** A phrase whose wording differs by size stands on a line of its own for each. */
function lines(text: string): ElementContent[] {
  return text
    .split('\n')
    .flatMap((line, index): ElementContent[] => [
      ...(index === 0 ? [] : [h('br')]),
      ...(line === '' ? [] : [{ type: 'text', value: line } as const]),
    ])
}

/**
 * A term in the draft's own terms and in the other country's, of which the page shows one; without a style sheet, the
 * draft's own.
 */
export function termElements(text: string, term: Term, stops: Stops): ElementContent[] {
  const tabIndex = term.reading !== null && stops.at(term.reading) ? 0 : -1
  if (term.other === text) return wordElements(text, term, {}, tabIndex)
  return [
    ...wordElements(text, term, { className: [termClass('own')] }, tabIndex),
    ...wordElements(term.other, term, { className: [termClass('other')], hidden: true }, tabIndex),
  ]
}

interface Look {
  readonly className?: readonly string[]
  readonly hidden?: true
}

/** A word with a reading shows it when it is tapped or has the focus; an abbreviation is heard in full. */
function wordElements(text: string, { reading, explains }: Term, look: Look, tabIndex: number): ElementContent[] {
  const className = [...(look.className ?? []), ...(reading === null ? [] : [readingClass(reading)])]
  if (className.length === 0) return [{ type: 'text', value: text }]
  const properties = { ...look, className }
  if (reading === null) return [h('span', properties, text)]
  if (explains === true) return [h('span', { ...properties, className: [...className, 'explained'], tabIndex }, text)]
  return [h('abbr', { ...properties, tabIndex }, h('span', { ariaHidden: 'true' }, text))]
}
