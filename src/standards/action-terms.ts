import type { Source } from './source.ts'

export const actionTermsSource: Source = {
  publisher: 'Craft Yarn Council',
  title: 'Differences in US and UK terms',
  edition: 'web',
  url: 'https://www.craftyarncouncil.com/standards/crochet-abbreviations',
  how: 'from memory',
  note: 'The three pairs below the stitches: gauge and tension, skip and miss, yarn over and yarn over hook. Each is seen in use on both sides; the forms of the verb are our own.',
}

/** A word for what is done, or for the gauge, in both countries; forms of one verb are pairs of their own. */
export interface ActionTerm {
  readonly us: string
  readonly uk: string
  /** The abbreviations, where there are some. */
  readonly usShort?: string
  readonly ukShort?: string
  /** Whether it is a step of a row; a word of prose only otherwise. */
  readonly inRows: boolean
}

export const actionTerms: readonly ActionTerm[] = [
  { us: 'skip', uk: 'miss', usShort: 'sk', inRows: true },
  { us: 'skips', uk: 'misses', inRows: true },
  { us: 'skipped', uk: 'missed', inRows: true },
  { us: 'skipping', uk: 'missing', inRows: true },
  { us: 'yarn over', uk: 'yarn over hook', usShort: 'yo', ukShort: 'yoh', inRows: true },
  { us: 'gauge', uk: 'tension', inRows: false },
]
