import { type OutlineEntry, outline } from '../html/index.ts'
import { always } from '../measure/index.ts'
import type { Pattern } from '../pattern/pattern.ts'

/**
 * The sections that the page makes from facts. The anchors start with `pattern-`, so that a heading of the designer's
 * own such as `Gauge` keeps its anchor to itself.
 */
const headings = {
  sizes: 'Sizes and finished measures',
  materials: 'Materials',
  safety: 'Safety',
  gauge: 'Gauge',
  abbreviations: 'Abbreviations',
  film: 'Film',
  edition: 'Edition and changes',
} as const

export type SectionName = keyof typeof headings

/** A section's anchor and heading; a gauge is a tension in UK terms. */
export function sectionOf({ terms }: Pattern, name: SectionName): OutlineEntry {
  const id = `pattern-${name}`
  if (name !== 'gauge') return { id, text: [always(headings[name])] }
  const [own, other] = terms === 'us' ? ['Gauge', 'Tension'] : ['Tension', 'Gauge']
  return { id, text: [{ ...always(own), term: { other, reading: null } }] }
}

/** Whether the pattern has anything to say there. */
export function hasSection(pattern: Pattern, name: SectionName): boolean {
  const { materials } = pattern
  const present: Readonly<Record<SectionName, boolean>> = {
    sizes: pattern.fits.length + pattern.finished.length > 0,
    materials: materials.yarn.length + materials.hooks.length + materials.notions.length > 0,
    safety: pattern.cautions.length > 0,
    gauge: pattern.gauge.length > 0,
    abbreviations: pattern.abbreviations.length > 0,
    film: pattern.film !== null,
    edition: pattern.edition !== null || pattern.published !== null || pattern.changes.length > 0,
  }
  return present[name]
}

const beforeBody: readonly SectionName[] = ['sizes', 'materials', 'safety', 'gauge', 'abbreviations', 'film']

/** The list of contents: the sections that there are, and the highest headings of the body between them. */
export function contentsOf(pattern: Pattern): readonly OutlineEntry[] {
  const entries = (names: readonly SectionName[]): OutlineEntry[] =>
    names.filter((name) => hasSection(pattern, name)).map((name) => sectionOf(pattern, name))
  return [...entries(beforeBody), ...outline(pattern.body), ...entries(['edition'])]
}
