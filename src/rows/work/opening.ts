import type { Kinds } from '../fabric.ts'
import { kindNumber } from '../fabric.ts'
import type { Counting } from '../step.ts'
import type { BaseStitch, Stitch } from '../terms/stitch.ts'
import { heightInChains, plain, stitchKey } from '../terms/stitch.ts'
import { alone, makeSpace } from './make.ts'
import type { Opening, Stop, Work } from './state.ts'
import { push } from './state.ts'
import { add } from './tally.ts'

const byHeight: readonly BaseStitch[] = [
  'singleCrochet',
  'singleCrochet',
  'halfDoubleCrochet',
  'doubleCrochet',
  'treble',
  'doubleTreble',
  'tripleTreble',
]

/** The stitch an opening chain stands for: the row's own where it is tall enough, else the one of that height. */
function standsFor(chains: number, rowStitch: Stitch | null): Stitch {
  const height = rowStitch === null ? 0 : heightInChains[rowStitch.base]
  if (rowStitch !== null && height >= 2 && (height === chains || (height < chains && chains > 3))) {
    return plain(rowStitch.base)
  }
  return plain(byHeight[Math.min(chains, 6)] ?? 'doubleCrochet')
}

/**
 * Whether an opening chain counts when nothing is said. Default of the teaching tables: not for
 * single crochet, yes for double crochet and taller, undecided for half double crochet.
 */
function byConvention(work: Work, chains: number): boolean {
  return work.rules.topsUsed.has(chains) || chains >= 3
}

function decide(work: Work, chains: number, counting: Counting | null, key: string): Counting | 'space' {
  const said = counting ?? work.rules.said.get(chains) ?? null
  if (said !== null) return said
  if (chains < 2) return { counts: false }
  const first = byConvention(work, chains)
  const choice = work.choose(key, 3)
  if (choice === 2) return 'space'
  const counts = choice === 0 ? first : !first
  const decided: Counting = counts ? { counts, as: null } : { counts }
  work.chosen.set(chains, decided)
  return decided
}

/** Chains beyond the stitch's own height are a space: `ch 4` before dc is dc and ch-1. */
function extra(chains: number, stitch: Stitch): number {
  return chains >= 4 ? Math.max(0, chains - heightInChains[stitch.base]) : 0
}

function countAsStitch(work: Work, opening: Opening, stitch: Stitch, spare: number): Stop | null {
  add(work.tally, stitchKey(stitch), 1)
  work.stitches += 1
  work.turningStitches += 1
  const kind = kindNumber(work.kinds, { what: 'stitch', stitch, name: null, turning: true })
  return push(work, kind, 1, -1, opening.at, work.last) ?? makeSpace(work, spare, alone, opening.at, opening.chains)
}

/** The number of an opening chain that does not count. */
function turningNumber(kinds: Kinds): number {
  return kindNumber(kinds, { what: 'turning' })
}

/** The first place of the row, where an opening chain stands. */
function standOnFirst(work: Work): void {
  if (work.last >= 0 || work.below === null) return
  const first = firstPlace(work)
  if (first < 0) return
  work.last = first
  work.cursor = first + 1
}

/** The first place that is not an opening chain of the row below that does not count. */
export function firstPlace(work: Work): number {
  const { below } = work
  if (below === null) return -1
  for (let at = work.cursor; at < work.end; at += 1) {
    if (work.kinds.list[below.places[at] ?? -1]?.what !== 'turning') return at
  }
  return -1
}

/** Settles what the opening chain is before anything else is made. */
export function settleOpening(work: Work): Stop | null {
  const { opening } = work
  if (opening === null) return null
  work.opening = null
  const counting = decide(work, opening.chains, opening.counting, `opening ${opening.chains}`)
  // `ch 3, sk 2, sc in next st`: chains to the first stitch, not in place of one.
  if (counting === 'space') return makeSpace(work, opening.chains, alone, opening.at)
  if (!counting.counts) return push(work, turningNumber(work.kinds), 1, -1, opening.at, -1)
  standOnFirst(work)
  const stitch = counting.as ?? standsFor(opening.chains, work.rowStitch)
  return countAsStitch(work, opening, stitch, extra(opening.chains, stitch))
}

/**
 * Chains skipped at the beginning of a foundation chain. `skipped` beyond the stitch's height are a
 * space and the chains under it: `dc in 6th ch` leaves dc, ch-1 and one chain skipped.
 */
export function settleSkippedChains(work: Work, opening: Opening, stitch: Stitch | null, key: string): Stop | null {
  const height = stitch === null ? 3 : heightInChains[stitch.base]
  const over = opening.chains - height
  const turning = turningNumber(work.kinds)
  const said = opening.counting
  if (said === null && (height < 2 || over < 0)) return push(work, turning, 1, -1, opening.at, -1)
  const counting = said ?? decide(work, opening.chains, null, key)
  if (counting === 'space' || !counting.counts) return push(work, turning, 1, -1, opening.at, -1)
  const as = counting.as ?? plain(stitch?.base ?? 'doubleCrochet')
  const spare = over <= 1 ? Math.max(0, over) : Math.ceil(over / 2)
  return countAsStitch(work, opening, as, spare)
}
