import type { Pattern } from '../../src/pattern/pattern.ts'

/** A pattern with nothing to it but what a test says. */
export function pattern(slug: string, facts: Partial<Pattern> = {}): Pattern {
  return {
    slug,
    title: slug.charAt(0).toUpperCase() + slug.slice(1).replaceAll('-', ' '),
    summary: null,
    lead: [],
    terms: 'us',
    kinds: [],
    fit: null,
    skill: null,
    published: null,
    edition: null,
    changes: [],
    sizes: ['Small', 'Large'],
    wearers: [],
    fits: [],
    finished: [],
    measures: [],
    materials: { yarn: [], yarnNote: null, hooks: [], notions: [] },
    gauge: [],
    readings: [],
    abbreviations: [],
    cautions: [],
    cover: null,
    film: null,
    body: [],
    pieces: [],
    rows: [],
    values: {},
    adjustables: [],
    own: [],
    yarn: {},
    ...facts,
  }
}

/** The materials of a pattern in one yarn of a category. */
export function inYarn(category: number | null): Pick<Pattern, 'materials'> {
  const yarn = [{ as: 'main', category, description: [], amount: null }]
  return { materials: { yarn, yarnNote: null, hooks: [], notions: [] } }
}
