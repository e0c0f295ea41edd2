/**
 * Where the keyboard stops at words that explain themselves: at the first of each kind below a heading. Any of them can be
 * tapped; a stop at every one would bury all others.
 */
export interface Stops {
  /** Whether it stops at the next word with this reading. */
  readonly at: (reading: number) => boolean
  /** A heading: all is new again. */
  readonly begin: () => void
}

export function firstUses(): Stops {
  const met = new Set<number>()
  return {
    at: (reading) => {
      const first = !met.has(reading)
      met.add(reading)
      return first
    },
    begin: () => met.clear(),
  }
}

/** Beside the text the keyboard stops at none. */
export const noStops: Stops = { at: () => false, begin: () => {} }
