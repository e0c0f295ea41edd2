import type { Span } from '../../diagnostic/index.ts'
import { forSize } from '../count.ts'
import type { Row } from '../fabric.ts'
import { chainRow, joinedTo } from '../fabric.ts'
import type { Part, Target, Where } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'
import { beginOn } from './lay.ts'
import { closePicot, picotKey } from './make.ts'
import { settleSkippedChains } from './opening.ts'
import { countMeant } from './place.ts'
import { beginSpoke, beginsSpoke } from './spoke.ts'
import type { Stop, Work } from './state.ts'
import { add, besidesKey } from './tally.ts'

/** `sl st in 3rd ch from hook` after chains just made closes a picot. */
export function picotAt(work: Work, nth: number): boolean {
  const kind = work.kinds.list[work.made.places.at(-1) ?? -1]
  return kind?.what === 'space' && kind.chains >= nth - 1
}

/** The chains just made, closed to a picot. */
export function workPicot(work: Work): Stop | null {
  add(work.tally, picotKey, 1)
  return closePicot(work)
}

/** Chains worked on before the row: they come before its places. */
function layChains(work: Work, below: Row, chains: number): void {
  const laid = chainRow(work.kinds, chains, work.order)
  beginOn(work, laid)
  add(work.inside, besidesKey('chain'), chains)
  work.below = { ...joinedTo(laid, below), circular: below.circular, foundation: below.foundation }
  work.end = work.below.places.length
}

/** A chain that is but a few stitches longer than what is skipped. */
function isBlock(chains: number, nth: number): boolean {
  return chains > nth && chains <= 2 * nth
}

/** How many chains are worked into from the hook on: those laid before the row, or the foundation. */
function chainsLaid({ below }: Work, opening: Work['opening']): number {
  return opening?.chains ?? below?.places.length ?? 0
}

/** The chains before the hook: skipped ones are passed, and may count. */
export function toChainFromHook(
  work: Work,
  where: Where & { kind: 'fromHook' },
  parts: readonly Part[],
  at: Span,
): Stop | null {
  const nth = forSize(where.nth, work.size)
  const { opening, below } = work
  if (opening !== null) {
    // Chains worked on before the row, to widen it: they are the first places.
    if (below !== null) layChains(work, below, opening.chains)
    work.opening = null
  }
  if (work.below === null) return { why: 'nothing there', at }
  // Chains from the hook are a foundation's, or those that this row or the end of the last one has brought.
  if (!(work.below.foundation || opening !== null) || work.cursor !== 0 || work.made.places.length > 0)
    return { why: 'no such place', at, wanted: 'chains from the hook' }
  if (work.end < nth) return { why: 'too few', at, wanted: `${nth} chains`, there: work.end }
  const stitch = stitchOfParts(parts)
  const skipped = { at, chains: nth - 1, counting: where.counting ?? opening?.counting ?? null }
  // A chain that counts stands on the last of those skipped.
  work.last = nth - 2
  const stop = settleSkippedChains(work, skipped, stitch, isBlock(chainsLaid(work, opening), nth))
  work.last = nth - 1
  work.begunAt = nth - 1
  work.into = [work.last]
  work.cursor = nth
  work.lastTarget = [{ kind: 'stitch', said: true }]
  return stop
}

/** `starting in 2nd ch from hook`: what follows begins there. */
export function startFromHook(work: Work, where: Where & { kind: 'fromHook' }, at: Span): Stop | null {
  if (beginsSpoke(work, where, false)) {
    beginSpoke(work, where, false)
    return null
  }
  const stop = toChainFromHook(work, where, [], at)
  work.cursor -= 1
  return stop
}

/** The first stitch that parts make: what skipped chains stand for. */
export function stitchOfParts(parts: readonly Part[]): Stitch | null {
  for (const part of parts) {
    if (part.kind === 'stitch' || part.kind === 'together') return part.stitch
    if (part.kind !== 'special') continue
    const inner = Array.isArray(part.special.makes) ? stitchOfParts(part.special.makes) : null
    if (inner !== null) return inner
  }
  return null
}

/** `in the 4th ch` in the middle of a row: the fourth of those ahead. */
export function isUnderWay(work: Work, { said }: Where & { kind: 'fromHook' }): boolean {
  const begins = work.opening !== null || work.below?.foundation === true
  return !said && (work.cursor > 0 || work.made.places.length > 0 || !begins)
}

/** Where only the turning chain is left, its chains are those that are counted. */
export function ahead(work: Work, { nth }: Where & { kind: 'fromHook' }): Where {
  if (countMeant(work, anyStitch, work.cursor, work.end) === 1 && endsInTurningChain(work))
    return { kind: 'turningChain', space: false }
  return { kind: 'nth', nth, of: [{ kind: 'stitch', said: false }] }
}

const anyStitch: Target = [{ kind: 'stitch', said: true }]

function endsInTurningChain({ below, kinds, end }: Work): boolean {
  const kind = kinds.list[below?.places[end - 1] ?? -1]
  return kind?.what === 'stitch' && kind.turning
}
