import type { LedgerRow } from './ledger.ts'
import type { MadeByRow } from './written.ts'

function bare(name: string): string {
  return name.trim().toLowerCase().replace(/\s+/g, ' ')
}

/** Spellings of one kind: `dc` and `dcs`, `shell` and `shells`, `ch-2 sp` and `ch-2 sps`. */
function isSameKind(asked: string, key: string): boolean {
  const kind = bare(key)
  return asked === kind || asked === `${kind}s` || asked === `${kind}es`
}

/**
 * What a worked row has made, for placeholders that ask. `count` takes an abbreviation in the
 * draft's terms, a space kind or a special stitch, singular or plural; null when the row makes none.
 */
export function madeBy(row: LedgerRow): MadeByRow {
  return {
    total: row.total,
    count: (what) => {
      const asked = bare(what)
      const named = row.names[asked]
      for (const [key, counts] of Object.entries(row.counts)) {
        if (key === named || isSameKind(asked, key))
          return counts.map((count, size) => (row.total[size] === null ? null : count))
      }
      return null
    },
  }
}
