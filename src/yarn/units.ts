import type { LedgerRow } from '../rows/ledger.ts'
import { type Dictionary, dictionaryFor } from '../rows/terms/dictionary.ts'
import { chainUse, closedAsOneUse, legUse, stitchUse } from './use.ts'

/** Yarn that one working of a row takes in a size, counted in single crochets. */
export function unitsOf({ counts, besides }: LedgerRow, terms: 'us' | 'uk', size: number): number {
  const dictionary = dictionaryFor(terms)
  let units = 0
  for (const [kind, bySize] of Object.entries(counts)) units += (bySize[size] ?? 0) * useOf(kind, dictionary)
  for (const [kind, bySize] of Object.entries(besides)) {
    units += (bySize[size] ?? 0) * (kind === 'ch' ? chainUse : closedAsOneUse)
  }
  return units
}

/**
 * A space of n chains takes n chains' yarn. The name of a decrease stands beside the one stitch that is left, so it
 * brings the other legs. Special stitches bring nothing: what they are made of is counted by its own kinds.
 */
function useOf(kind: string, dictionary: Dictionary): number {
  const space = /^ch-(\d+) sp$/.exec(kind)
  if (space !== null) return Number(space[1]) * chainUse
  if (kind === 'ch') return chainUse
  const stitch = dictionary.stitches.get(kind.toLowerCase())
  if (stitch !== undefined) return stitchUse(stitch)
  const [, closed = '', legs] = /^(.+?)(\d+)tog$/i.exec(kind) ?? []
  const leg = dictionary.stitches.get(closed.toLowerCase())
  return leg === undefined ? 0 : (Number(legs) - 1) * legUse(leg)
}

/** `single crochet in rounds` is single crochet; null for a stitch pattern. */
export function useOfFabric(words: string, terms: 'us' | 'uk'): number | null {
  const [, name = ''] =
    /^(.*?)(?:,? (?:(?:worked|made|in|through|flat|back|front)\b.*|rows|rounds|rnds|stitch))?$/i.exec(words) ?? []
  const stitch = dictionaryFor(terms).stitches.get(name.trim().toLowerCase())
  return stitch === undefined ? null : stitchUse(stitch)
}
