import type { Source } from './source.ts'

/** A regular hook. Compare hooks by millimetres only: letters and numbers differ by maker. */
export interface Hook {
  readonly mm: number
  /** US letter and number, `K-10½`; null where the size has none. */
  readonly us: string | null
  /** The number of the old UK scale. */
  readonly ukOld: string | null
  /** Whether millimetres against US letter were seen in a published chart or are from memory. */
  readonly how: string
  readonly note?: string
}

/** A steel hook: the higher the number, the finer. Two number systems exist, so the number alone is ambiguous. */
export interface SteelHook {
  readonly us: string
  readonly mm: number
  readonly how: string
}

export const hookSource: Source = {
  publisher: 'Craft Yarn Council',
  title: 'Hooks & Needles: crochet hook sizes, millimetre range and US range',
  edition: 'web chart',
  url: 'https://www.craftyarncouncil.com/standards/hooks-and-needles',
  how: 'from memory',
  note: "The list of CYC rows is from memory. Rows marked seen were also found, millimetre against letter, in at least one (mostly three or more) sellers' charts. The publisher warns that letters and numbers vary by maker and that the millimetre size decides: store and compare millimetres only.",
}

export const hooks: readonly Hook[] = [
  {
    mm: 2,
    us: null,
    ukOld: '14',
    how: 'from memory',
    note: 'Listed as B-1 by some sellers; not on the CYC list.',
  },
  {
    mm: 2.25,
    us: 'B-1',
    ukOld: '13',
    how: 'seen',
  },
  {
    mm: 2.5,
    us: null,
    ukOld: '12',
    how: 'seen',
  },
  {
    mm: 2.75,
    us: 'C-2',
    ukOld: null,
    how: 'seen',
    note: 'Old UK size: charts give 11 or 12, or skip it.',
  },
  {
    mm: 3,
    us: null,
    ukOld: '11',
    how: 'seen',
  },
  {
    mm: 3.125,
    us: 'D',
    ukOld: null,
    how: 'from memory',
  },
  {
    mm: 3.25,
    us: 'D-3',
    ukOld: '10',
    how: 'seen',
  },
  {
    mm: 3.5,
    us: 'E-4',
    ukOld: '9',
    how: 'seen',
  },
  {
    mm: 3.75,
    us: 'F-5',
    ukOld: null,
    how: 'seen',
    note: 'Old UK hooks skip it; the knitting-needle charts give 9.',
  },
  {
    mm: 4,
    us: 'G-6',
    ukOld: '8',
    how: 'seen',
  },
  {
    mm: 4.25,
    us: 'G',
    ukOld: null,
    how: 'seen',
  },
  {
    mm: 4.5,
    us: '7',
    ukOld: '7',
    how: 'seen',
  },
  {
    mm: 5,
    us: 'H-8',
    ukOld: '6',
    how: 'seen',
  },
  {
    mm: 5.25,
    us: 'I',
    ukOld: null,
    how: 'from memory',
  },
  {
    mm: 5.5,
    us: 'I-9',
    ukOld: '5',
    how: 'seen',
  },
  {
    mm: 5.75,
    us: 'J',
    ukOld: null,
    how: 'from memory',
  },
  {
    mm: 6,
    us: 'J-10',
    ukOld: '4',
    how: 'seen',
    note: 'One shop chart shifts UK numbers one place from here to 7 mm (3, 2, 1); the other charts agree on 4, 3, 2.',
  },
  {
    mm: 6.5,
    us: 'K-10½',
    ukOld: '3',
    how: 'seen',
    note: "Some makers' K was 7 mm in the past: trust the millimetres.",
  },
  {
    mm: 7,
    us: null,
    ukOld: '2',
    how: 'seen',
    note: 'No US letter. Older K hooks were 7 mm.',
  },
  {
    mm: 8,
    us: 'L-11',
    ukOld: '0',
    how: 'seen',
  },
  {
    mm: 9,
    us: 'M/N-13',
    ukOld: '00',
    how: 'seen',
    note: 'Makers stamp M or N.',
  },
  {
    mm: 10,
    us: 'N/P-15',
    ukOld: '000',
    how: 'seen',
    note: 'Makers stamp N or P; one chart says N-13.',
  },
  {
    mm: 11.5,
    us: 'P-16',
    ukOld: null,
    how: 'seen',
  },
  {
    mm: 12,
    us: null,
    ukOld: null,
    how: 'from memory',
    note: 'Called O by some sellers.',
  },
  {
    mm: 15,
    us: 'P/Q',
    ukOld: null,
    how: 'seen',
  },
  {
    mm: 15.75,
    us: 'Q',
    ukOld: null,
    how: 'seen',
    note: 'Grouped with 16 mm in the chart seen.',
  },
  {
    mm: 16,
    us: 'Q',
    ukOld: null,
    how: 'seen',
  },
  {
    mm: 19,
    us: 'S',
    ukOld: null,
    how: 'seen',
  },
  {
    mm: 25,
    us: 'T/U/X',
    ukOld: null,
    how: 'from memory',
  },
  {
    mm: 30,
    us: 'T/X',
    ukOld: null,
    how: 'from memory',
  },
]

/** Names that some makers or sellers give to a size of another name, by the notes above; not to be printed. */
export const hookNamesBeside: readonly Pick<Hook, 'mm' | 'us'>[] = [
  { mm: 2, us: 'B-1' },
  { mm: 7, us: 'K-10½' },
  { mm: 10, us: 'N-13' },
  { mm: 12, us: 'O' },
]

/** Tapered American hooks. */
export const steelHooksA: readonly SteelHook[] = [
  {
    us: '00',
    mm: 3.5,
    how: 'seen',
  },
  {
    us: '0',
    mm: 3.25,
    how: 'from memory',
  },
  {
    us: '1',
    mm: 2.75,
    how: 'from memory',
  },
  {
    us: '2',
    mm: 2.25,
    how: 'from memory',
  },
  {
    us: '3',
    mm: 2.1,
    how: 'from memory',
  },
  {
    us: '4',
    mm: 2,
    how: 'from memory',
  },
  {
    us: '5',
    mm: 1.9,
    how: 'from memory',
  },
  {
    us: '6',
    mm: 1.8,
    how: 'from memory',
  },
  {
    us: '7',
    mm: 1.65,
    how: 'seen',
  },
  {
    us: '8',
    mm: 1.5,
    how: 'from memory',
  },
  {
    us: '9',
    mm: 1.4,
    how: 'from memory',
  },
  {
    us: '10',
    mm: 1.3,
    how: 'from memory',
  },
  {
    us: '11',
    mm: 1.1,
    how: 'from memory',
  },
  {
    us: '12',
    mm: 1,
    how: 'from memory',
  },
  {
    us: '13',
    mm: 0.85,
    how: 'from memory',
  },
  {
    us: '14',
    mm: 0.75,
    how: 'seen',
  },
]

/** In-line hooks, as in the lace row of the yarn chart. */
export const steelHooksB: readonly SteelHook[] = [
  {
    us: '6',
    mm: 1.6,
    how: 'seen (range end of the CYC lace row)',
  },
  {
    us: '7',
    mm: 1.5,
    how: 'seen',
  },
  {
    us: '8',
    mm: 1.4,
    how: 'seen (range end of the CYC lace row)',
  },
]
