import type { Source } from './source.ts'

/** A measured head: not a finished hat, as the heads of the published table read. */
export interface MeasuredHead {
  readonly who: 'women' | 'men' | 'children'
  /** Of children, the age in months up to which it is measured; null for grown people. */
  readonly upToMonths: number | null
  readonly cm: number
}

export const measuredHeadSource: Source = {
  publisher: 'an encyclopedia, and sizeguide.net',
  title: 'Mean head circumference of adults (a US study); hat sizes of children by age',
  edition: 'undated',
  url: null,
  how: 'seen',
  note: 'Women 55 cm and men 57 cm are means of a US study that an encyclopedia quotes; a UK study quoted there has 55.2 and 57.2. Children are from a hat size table by age: a size fits up to the age given.',
}

/** Youngest first. */
export const measuredHeads: readonly MeasuredHead[] = [
  { who: 'children', upToMonths: 0, cm: 34 },
  { who: 'children', upToMonths: 3, cm: 41 },
  { who: 'children', upToMonths: 6, cm: 43 },
  { who: 'children', upToMonths: 12, cm: 46 },
  { who: 'children', upToMonths: 24, cm: 48 },
  { who: 'children', upToMonths: 71, cm: 51 },
  { who: 'children', upToMonths: 131, cm: 53 },
  { who: 'women', upToMonths: null, cm: 55 },
  { who: 'men', upToMonths: null, cm: 57 },
]
