import Fraction from 'fraction.js'
import type { Environment } from '../formula/index.ts'
import type { PerSize } from '../measure/index.ts'
import { madeBy } from '../rows/index.ts'
import type { LedgerRow } from '../rows/ledger.ts'

/** Finds a worked row by its label, and its piece where the label alone is not enough. */
export type RowLookup = (piece: string | null, label: string) => LedgerRow | null

/** The environment with the worked rows in it: `total` and `count(…)` are answered from the ledger. */
export function madeEnvironment(environment: Environment, rows: RowLookup, here: () => LedgerRow | null): Environment {
  return {
    ...environment,
    made: ({ what, piece, row: label }) => {
      const row = label === null ? here() : rows(piece, label)
      if (row === null) return null
      const made = madeBy(row)
      return asFractions(what === 'total' ? made.total : made.count(what))
    },
  }
}

export function asFractions(counts: PerSize<number | null> | null): PerSize<Fraction | null> | null {
  return counts === null ? null : counts.map((count) => (count === null ? null : new Fraction(count)))
}
