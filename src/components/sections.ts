import { type OutlineEntry, outline } from '../html/index.ts'
import type { Pattern } from '../pattern/pattern.ts'

/**
 * The sections that the page makes from facts, with their headings. The anchors start with `pattern-`,
 * so that a heading of the designer's own such as `Gauge` keeps its anchor to itself.
 */
export const sections = {
  sizes: { id: 'pattern-sizes', text: 'Sizes and finished measures' },
  materials: { id: 'pattern-materials', text: 'Materials' },
  safety: { id: 'pattern-safety', text: 'Safety' },
  gauge: { id: 'pattern-gauge', text: 'Gauge' },
  abbreviations: { id: 'pattern-abbreviations', text: 'Abbreviations' },
  film: { id: 'pattern-film', text: 'Film' },
  edition: { id: 'pattern-edition', text: 'Edition and changes' },
} as const satisfies Record<string, OutlineEntry>

export type SectionName = keyof typeof sections

/** Whether the pattern has anything to say there. */
export function hasSection(pattern: Pattern, name: SectionName): boolean {
  const { materials } = pattern
  const present: Readonly<Record<SectionName, boolean>> = {
    sizes: pattern.fits.length + pattern.finished.length > 0,
    materials: materials.yarn.length + materials.hooks.length + materials.notions.length > 0,
    safety: pattern.cautions.length > 0,
    gauge: pattern.gauge.length > 0,
    abbreviations: pattern.abbreviations.length > 0,
    film: pattern.video !== null,
    edition: pattern.edition !== null || pattern.published !== null || pattern.changes.length > 0,
  }
  return present[name]
}

const beforeBody: readonly SectionName[] = ['sizes', 'materials', 'safety', 'gauge', 'abbreviations', 'film']

/** The list of contents: the sections that there are, and the highest headings of the body between them. */
export function contentsOf(pattern: Pattern): readonly OutlineEntry[] {
  const entries = (names: readonly SectionName[]): OutlineEntry[] =>
    names.filter((name) => hasSection(pattern, name)).map((name) => sections[name])
  return [...entries(beforeBody), ...outline(pattern.body), ...entries(['edition'])]
}
