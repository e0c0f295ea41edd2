import type { ElementContent } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import type { Segment, Term } from '../measure/segment.ts'
import { segmentClass, systemClass, termClass } from './sizes.ts'

/** Printed pieces as elements that the page's switches work by: sizes, systems of measures, terms. */
export function segmentElements(segments: readonly Segment[]): ElementContent[] {
  return runsOfSystem(segments).flatMap(({ system, run }) => {
    const content = run.flatMap(segmentElement)
    return system === undefined ? content : [h('span', { className: [systemClass(system)] }, content)]
  })
}

/** The same as HTML. */
export function segmentsHtml(segments: readonly Segment[]): string {
  return toHtml(segmentElements(segments))
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

function segmentElement({ text, show, term }: Segment): ElementContent[] {
  const className = segmentClass(show)
  const content = term === undefined ? lines(text) : termElements(text, term)
  return className === null ? content : [h('span', { className: [...className] }, content)]
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
export function termElements(text: string, { other, entry }: Term): ElementContent[] {
  if (other === text) return word(text, entry, null)
  return [...word(text, entry, 'own'), ...word(other, entry, 'other')]
}

function word(text: string, entry: number | null, which: 'own' | 'other' | null): ElementContent[] {
  if (which === null && entry === null) return [{ type: 'text', value: text }]
  const properties = which === null ? {} : { className: [termClass(which)], hidden: which === 'other' }
  return [h(entry === null ? 'span' : 'abbr', properties, text)]
}
