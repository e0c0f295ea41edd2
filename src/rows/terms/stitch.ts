/** Stitches by their US full names, whatever terms a draft is written in. */
export type BaseStitch =
  | 'slipStitch'
  | 'singleCrochet'
  | 'halfDoubleCrochet'
  | 'doubleCrochet'
  | 'treble'
  | 'doubleTreble'
  | 'tripleTreble'

export type StitchStyle = 'plain' | 'frontPost' | 'backPost' | 'extended' | 'foundation'

/** One stitch: what it is, and how it is worked. */
export interface Stitch {
  readonly base: BaseStitch
  readonly style: StitchStyle
}

/** A stitch as one country writes it. */
export interface StitchTerm {
  readonly stitch: BaseStitch
  readonly abbreviation: string
  readonly name: string
  /** Other spellings, abbreviations and full names. */
  readonly also: readonly string[]
}

/** A country's stitch names with their source. */
export interface TermTable {
  readonly terms: 'us' | 'uk'
  readonly source: string
  readonly stitches: readonly StitchTerm[]
}

/**
 * Height in chains, which is also the length of the turning chain. Seven published teaching tables
 * agree for the first four (among them the Crochet Guild of America's lessons, 1997).
 */
export const heightInChains: Readonly<Record<BaseStitch, number>> = {
  slipStitch: 0,
  singleCrochet: 1,
  halfDoubleCrochet: 2,
  doubleCrochet: 3,
  treble: 4,
  doubleTreble: 5,
  tripleTreble: 6,
}

/** A key under which stitches of one kind are counted. */
export function stitchKey(stitch: Stitch): string {
  return stitch.style === 'plain' ? stitch.base : `${stitch.style}:${stitch.base}`
}

export function plain(base: BaseStitch): Stitch {
  return { base, style: 'plain' }
}
