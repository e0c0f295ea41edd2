import type { Kinds } from '../fabric.ts'
import { blockName, kindNumber } from '../fabric.ts'
import { habitKey } from '../habits.ts'
import type { Counting } from '../step.ts'
import type { BaseStitch, Stitch } from '../terms/stitch.ts'
import { heightInChains, plain, stitchKey } from '../terms/stitch.ts'
import { push } from './lay.ts'
import { alone, makeSpace } from './make.ts'
import type { Opening, OpeningRules, Stop, Work } from './state.ts'
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
 * Whether an opening chain counts when nothing is said of it. Default of the teaching tables: not for
 * single crochet, yes for double crochet and taller, undecided for half double crochet.
 */
function byConvention({ rules }: Work, chains: number): boolean {
  return rules.elsewhere.get(chains)?.counts ?? (rules.topsUsed.has(chains) || chains >= 3)
}

/** What a chain may be that opens a row, or is skipped at its beginning. */
const ways = { counts: 0, not: 1, space: 2 } as const

/** Before tall stitches it is a matter of habit whether a chain counts; before others it may lead anywhere. */
function wayKey(before: 'opening' | 'skipped', chains: number, stitch: Stitch | null): string {
  const height = stitch === null ? 0 : heightInChains[stitch.base]
  const name = `${before} ${chains} ${stitch?.base ?? ''}`
  return height >= 2 && chains <= height + 3 ? habitKey(name) : name
}

function usualWay(work: Work, chains: number, stitch: Stitch | null, before: 'opening' | 'skipped'): number {
  const isLow = stitch !== null && heightInChains[stitch.base] < 2
  if (leadsOn(work, chains, before) || (isLow && work.rules.spacesUsed.has(chains))) return ways.space
  return byConvention(work, chains) ? ways.counts : ways.not
}

/** Whether the trade or the pattern's own words settle a habit of `wayKey`, so that a single row can't. */
export function isFirmOpening({ elsewhere, topsUsed }: OpeningRules, habit: string): boolean {
  const [before = '', length = '', base = ''] = habit.split(' ')
  if (before !== 'opening' && before !== 'skipped') return false
  const chains = Number(length)
  const height = new Map<string, number>(Object.entries(heightInChains)).get(base) ?? 0
  return elsewhere.has(chains) || topsUsed.has(chains) || (height >= 3 && chains >= height)
}

function leadsOn({ rules, leadsOn }: Work, chains: number, before: 'opening' | 'skipped'): boolean {
  const counts = rules.elsewhere.has(chains) || rules.topsUsed.has(chains)
  return leadsOn && before === 'opening' && chains > 1 && !counts
}

function decide(
  work: Work,
  opening: Opening,
  stitch: Stitch | null,
  before: 'opening' | 'skipped',
): Counting | 'space' {
  const { chains } = opening
  const said = opening.counting ?? work.rules.said.get(chains) ?? null
  if (said !== null) return said
  if (chains < 2) return { counts: false }
  const usual = usualWay(work, chains, stitch, before)
  const way = work.choose(wayKey(before, chains, stitch), 3, usual)
  if (way === ways.space) return 'space'
  const as = work.rules.elsewhere.get(chains)
  return way === ways.counts ? { counts: true, as: as?.counts === true ? as.as : null } : { counts: false }
}

/** How many blocks of its own a row has opened: they are in no one place. */
export const blocksKey = 'blocks'

/** Chains beyond the stitch's own height are a space: `ch 4` before dc is dc and ch-1. */
function extra(chains: number, stitch: Stitch): number {
  return chains >= 4 ? Math.max(0, chains - heightInChains[stitch.base]) : 0
}

function countAsStitch(
  work: Work,
  opening: Opening,
  stitch: Stitch,
  spare: number,
  name: string | null = null,
): Stop | null {
  add(work.tally, stitchKey(stitch), 1)
  if (name === blockName) add(work.inside, blocksKey, 1)
  work.stitches += 1
  work.turningStitches += 1
  const kind = kindNumber(work.kinds, { what: 'stitch', stitch, name, turning: true })
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
  work.opened = opening.chains
  const counting = decide(work, opening, work.rowStitch, 'opening')
  // `ch 3, sk 2, sc in next st`: chains to the first stitch, not in place of one.
  if (counting === 'space') return makeSpace(work, opening.chains, alone, opening.at, opening.chains)
  if (!counting.counts && counting.space !== undefined)
    return makeSpace(work, counting.space, alone, opening.at, opening.chains)
  if (!counting.counts) return push(work, turningNumber(work.kinds), 1, -1, opening.at, -1)
  standOnFirst(work)
  const stitch = counting.as ?? standsFor(opening.chains, work.rowStitch)
  return countAsStitch(work, opening, stitch, extra(opening.chains, stitch))
}

/** The most chains that are skipped only to turn before a low stitch. */
const leastLoop = 3

/** `sc in 10th ch from hook`: the chains skipped are a loop of their own, as wide as those between the stitches to come. */
function settleLoop(work: Work, { chains, at }: Opening): Stop | null {
  // In a mesh of low stitches the chains skipped are a space like the others.
  const turns = chains <= leastLoop && !work.rules.spacesUsed.has(chains) && !work.makesSpaces
  if (work.choose(`loop ${chains}`, 2, turns ? 1 : 0) === 1) return push(work, turningNumber(work.kinds), 1, -1, at, -1)
  return makeSpace(work, Math.ceil(chains / 2), alone, at, chains)
}

/**
 * Chains skipped at the beginning of a foundation chain. `skipped` beyond the stitch's height are a
 * space and the chains under it: `dc in 6th ch` leaves dc, ch-1 and one chain skipped.
 *
 * @param opensBlock whether the chain is but one block long
 */
export function settleSkippedChains(
  work: Work,
  opening: Opening,
  stitch: Stitch | null,
  opensBlock: boolean,
): Stop | null {
  const height = stitch === null ? 3 : heightInChains[stitch.base]
  const over = opening.chains - height
  work.opened = opening.chains
  const turning = turningNumber(work.kinds)
  const said = opening.counting
  if (said === null && height < 2 && opening.chains >= leastLoop) return settleLoop(work, opening)
  if (said === null && (height < 2 || over < 0)) return push(work, turning, 1, -1, opening.at, -1)
  const counting = said ?? decide(work, opening, stitch, 'skipped')
  if (counting !== 'space' && !counting.counts && counting.space !== undefined)
    return makeSpace(work, counting.space, alone, opening.at, opening.chains)
  if (counting === 'space' || !counting.counts) return push(work, turning, 1, -1, opening.at, -1)
  const as = counting.as ?? plain(stitch?.base ?? 'doubleCrochet')
  // One more is a chain under nothing, `V-st in 5th ch`, unless the words say what it counts as.
  const spare = over <= 1 ? (said === null ? 0 : Math.max(0, over)) : Math.ceil(over / 2)
  return countAsStitch(work, opening, as, spare, opensBlock ? blockName : null)
}
