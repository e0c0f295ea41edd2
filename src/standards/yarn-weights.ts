import type { Source } from './source.ts'

/** A published range; null at an end that is open. */
export interface Range {
  readonly min: number | null
  readonly max: number | null
}

export interface YarnWeight {
  readonly category: number
  readonly name: string
  readonly otherNames: readonly string[]
  /** Stitches of `stitch` over 4 inches. */
  readonly gauge: Range & { readonly stitch: 'sc' | 'dc' }
  readonly hookMm: Range
  readonly how: string
  /** Another version of the row that still circulates. */
  readonly older?: { readonly gauge: Range; readonly hookMm: Range }
}

/** The publisher calls the whole table guidelines only: the pattern's own gauge rules. */
export const yarnWeightSource: Source = {
  publisher: 'Craft Yarn Council',
  title: 'Standard Yarn Weight System',
  edition: 'web chart with categories 0-7 (Jumbo added about 2015)',
  url: 'https://www.craftyarncouncil.com/standards/yarn-weight-system',
  how: 'seen',
  note: "Read in five independent copies, not on the publisher's own page. Categories 0-5 agree in all copies. For 6 and 7 two versions circulate; the one with 9-15 mm and 15 mm is kept as the newest (that it is the newest is from memory) and the other is under older_version. The publisher calls the whole table guidelines only: the pattern's own gauge rules.",
}

export const yarnWeights: readonly YarnWeight[] = [
  {
    category: 0,
    name: 'Lace',
    otherNames: ['fingering', '10-count crochet thread'],
    gauge: {
      min: 32,
      max: 42,
      stitch: 'dc',
    },
    hookMm: {
      min: 1.4,
      max: 2.25,
    },
    how: 'seen',
  },
  {
    category: 1,
    name: 'Super Fine',
    otherNames: ['sock', 'fingering', 'baby'],
    gauge: {
      min: 21,
      max: 32,
      stitch: 'sc',
    },
    hookMm: {
      min: 2.25,
      max: 3.5,
    },
    how: 'seen',
  },
  {
    category: 2,
    name: 'Fine',
    otherNames: ['sport', 'baby'],
    gauge: {
      min: 16,
      max: 20,
      stitch: 'sc',
    },
    hookMm: {
      min: 3.5,
      max: 4.5,
    },
    how: 'seen',
  },
  {
    category: 3,
    name: 'Light',
    otherNames: ['DK', 'light worsted'],
    gauge: {
      min: 12,
      max: 17,
      stitch: 'sc',
    },
    hookMm: {
      min: 4.5,
      max: 5.5,
    },
    how: 'seen',
  },
  {
    category: 4,
    name: 'Medium',
    otherNames: ['worsted', 'afghan', 'aran'],
    gauge: {
      min: 11,
      max: 14,
      stitch: 'sc',
    },
    hookMm: {
      min: 5.5,
      max: 6.5,
    },
    how: 'seen',
  },
  {
    category: 5,
    name: 'Bulky',
    otherNames: ['chunky', 'craft', 'rug'],
    gauge: {
      min: 8,
      max: 11,
      stitch: 'sc',
    },
    hookMm: {
      min: 6.5,
      max: 9,
    },
    how: 'seen',
  },
  {
    category: 6,
    name: 'Super Bulky',
    otherNames: ['super bulky', 'super chunky', 'roving'],
    gauge: {
      min: 7,
      max: 9,
      stitch: 'sc',
    },
    hookMm: {
      min: 9,
      max: 15,
    },
    how: 'seen',
    older: {
      gauge: {
        min: 6,
        max: 9,
      },
      hookMm: {
        min: 9,
        max: 16,
      },
    },
  },
  {
    category: 7,
    name: 'Jumbo',
    otherNames: ['jumbo', 'roving'],
    gauge: {
      min: null,
      max: 6,
      stitch: 'sc',
    },
    hookMm: {
      min: 15,
      max: null,
    },
    how: 'seen',
    older: {
      gauge: {
        min: null,
        max: 5,
      },
      hookMm: {
        min: 16,
        max: null,
      },
    },
  },
]
