import { slug } from 'github-slugger'
import type { Pattern } from '../pattern/pattern.ts'
import { kindName, sizesNames, skillNames, yarnCategories, yarnName } from './names.ts'

/** What patterns are looked for by. */
export type FacetKey = 'kind' | 'skill' | 'yarn' | 'sizes'

/** One thing that patterns of a facet can be: Easy, Hat, Medium yarn. */
export interface FacetValue {
  readonly facet: FacetKey
  /** Its part of an address: `easy`. */
  readonly key: string
  readonly name: string
}

export interface Facet {
  readonly key: FacetKey
  readonly name: string
  /** What a pattern is by this facet; a pattern may be several things, or nothing. */
  readonly valuesOf: (pattern: Pattern) => readonly FacetValue[]
  /** All values in the order in which they are shown; null for the order of the alphabet. */
  readonly order: readonly string[] | null
}

const value = (facet: FacetKey, key: string, name: string): FacetValue => ({ facet, key, name })

/** `super-fine` */
const yarnKey = (category: number): string => slug(yarnName(category).replace(/ \(\d+\)$/, ''))

/** In the order in which addresses and titles name them. */
export const facets: readonly Facet[] = [
  {
    key: 'kind',
    name: 'Kind',
    order: null,
    valuesOf: ({ kinds }) => kinds.map((kind) => value('kind', slug(kind), kindName(kind))),
  },
  {
    key: 'skill',
    name: 'Skill',
    order: Object.keys(skillNames),
    valuesOf: ({ skill }) => (skill === null ? [] : [value('skill', skill, skillNames[skill])]),
  },
  {
    key: 'yarn',
    name: 'Yarn',
    order: yarnCategories.map(yarnKey),
    valuesOf: ({ materials }) =>
      materials.yarn.flatMap(({ category }) =>
        category === null ? [] : [value('yarn', yarnKey(category), yarnName(category))],
      ),
  },
  {
    key: 'sizes',
    name: 'Sizes',
    order: Object.keys(sizesNames),
    valuesOf: ({ wearers, sizes }) => {
      const found = [...wearers, ...(sizes.length === 1 ? (['one-size'] as const) : [])]
      return found.map((key) => value('sizes', key, sizesNames[key]))
    },
  },
]
