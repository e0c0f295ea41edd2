/**
 * Abbreviations that are the same in both countries' terms, with what they stand for. They make
 * nothing by themselves, but a reader looks for them in the list of abbreviations.
 * Source: Craft Yarn Council, Crochet abbreviations master list (from memory, most seen in use).
 */
export interface CommonTerm {
  readonly abbreviation: string
  readonly meaning: string
  /** Spellings in the rows, in lower case, that call for this entry. */
  readonly written: readonly string[]
}

export const commonTerms: readonly CommonTerm[] = [
  { abbreviation: 'beg', meaning: 'beginning', written: ['beg'] },
  { abbreviation: 'bet', meaning: 'between', written: ['bet'] },
  { abbreviation: 'BLO', meaning: 'back loop only', written: ['blo', 'bl'] },
  { abbreviation: 'ch', meaning: 'chain', written: ['ch', 'chs'] },
  { abbreviation: 'cont', meaning: 'continue', written: ['cont'] },
  { abbreviation: 'dec', meaning: 'decrease', written: ['dec', 'decs'] },
  { abbreviation: 'FLO', meaning: 'front loop only', written: ['flo', 'fl'] },
  { abbreviation: 'foll', meaning: 'following', written: ['foll'] },
  { abbreviation: 'inc', meaning: 'increase', written: ['inc', 'incs'] },
  { abbreviation: 'lp(s)', meaning: 'loop(s)', written: ['lp', 'lps'] },
  { abbreviation: 'MR', meaning: 'magic ring', written: ['mr'] },
  { abbreviation: 'pm', meaning: 'place marker', written: ['pm'] },
  { abbreviation: 'prev', meaning: 'previous', written: ['prev'] },
  { abbreviation: 'rem', meaning: 'remaining', written: ['rem'] },
  { abbreviation: 'rep', meaning: 'repeat', written: ['rep'] },
  { abbreviation: 'rnd(s)', meaning: 'round(s)', written: ['rnd', 'rnds'] },
  { abbreviation: 'RS', meaning: 'right side', written: ['rs'] },
  { abbreviation: 'sk', meaning: 'skip', written: ['sk'] },
  { abbreviation: 'sp(s)', meaning: 'space(s)', written: ['sp', 'sps'] },
  { abbreviation: 'st(s)', meaning: 'stitch(es)', written: ['st', 'sts'] },
  { abbreviation: 'tch', meaning: 'turning chain', written: ['tch', 't-ch'] },
  { abbreviation: 'tog', meaning: 'together', written: ['tog'] },
  { abbreviation: 'WS', meaning: 'wrong side', written: ['ws'] },
  { abbreviation: 'yo', meaning: 'yarn over', written: ['yo'] },
]
