import { goesByStitch } from '../row-words.ts'
import type { Target } from '../step.ts'
import { countMeant, nextMeant } from './place.ts'
import type { Work } from './state.ts'

/*
 * Stitches that are passed over on the way to a place which is named by where it stands: `sc in last st`. Between
 * spaces, corners and special stitches that is how one goes; from stitch to stitch it leaves some unworked.
 */

const anyStitch: Target = [{ kind: 'stitch', said: true }]

/** `…, ch 3, dc in last st`: chains just made may lie over as many stitches. */
function bridged(work: Work): number {
  if (work.skipped === work.cursor) return 0
  const last = work.kinds.list[work.made.places.at(-1) ?? -1]
  return last?.what === 'space' ? last.chains : 0
}

/** Spaces of chains among the places that are meant; a gap between groups is none. */
function countSpaces(work: Work, of: Target, from: number, to: number): number {
  let count = 0
  for (let at = from; at < to; at += 1) {
    const kind = work.kinds.list[work.below?.places[at] ?? -1]
    if (kind?.what === 'space') count += Math.min(1, countMeant(work, of, at, at + 1))
  }
  return count
}

function isSpace(target: Target): boolean {
  return target.every((accept) => accept.kind === 'space')
}

function leave(work: Work, stitches: number, spaces: number): void {
  work.unsaid += stitches + spaces
  work.spacesPassed += spaces
}

/** Places that a repeat to the end was going into, passed right after it; not the space that the turning chain itself brings. */
function missedByRepeat(work: Work, going: Target, to: number, of: Target): number {
  if (work.endless === null || work.endless.cursor !== work.cursor) return 0
  let count = 0
  for (let at = work.cursor; at < to; at += 1) {
    const kind = work.kinds.list[work.below?.places[at] ?? -1]
    const turning = of.length === 0 && kind?.what === 'space' && kind.opening !== null
    if (!turning) count += Math.min(1, countMeant(work, going, at, at + 1))
  }
  return count
}

/** Whether all places from here to `to` are of one group. */
function isOneGroup({ below, cursor }: Work, to: number): boolean {
  const group = below?.groups[cursor] ?? -1
  return group >= 0 && to > cursor + 1 && below?.groups[to - 1] === group
}

/** Notes what is passed over between here and `to`, the last place of a phrase that means `of`. */
export function passOver(work: Work, to: number, of: Target): void {
  const over = bridged(work)
  if (over === 0) leave(work, 0, countSpaces(work, goesByStitch(of) ? work.spacesNamed : of, work.cursor, to))
  if (work.lastTarget !== null && !goesByStitch(work.lastTarget)) {
    // Without chains over them spaces are counted already.
    if (over > 0 || !isSpace(work.lastTarget)) leave(work, 0, missedByRepeat(work, work.lastTarget, to, of))
    return
  }
  // To the turning chain past the rest of its group, as from shell to shell.
  if (of.length === 0 && isOneGroup(work, to)) return
  const passed = countMeant(work, work.stitchesNamed, work.cursor, to)
  if (passed > over) leave(work, passed, 0)
}

/** Notes spaces of a kind that the row goes into, where a phrase has gone past them from stitch to stitch. */
export function passSpaces(work: Work, from: number, to: number, of: Target): void {
  if (work.spacesNamed.length === 0 || !goesByStitch(of) || bridged(work) > 0) return
  leave(work, 0, countSpaces(work, work.spacesNamed, from, to))
}

/** `sk 2 dc, sc in next dc`: after words that skip, the next place follows at once; what lies before it was not skipped. */
export function passAfterSkip(work: Work, of: Target): void {
  if (work.skipped !== work.cursor || !of.every((accept) => accept.kind === 'named')) return
  const next = nextMeant(work, of)
  if (next >= 0) leave(work, countMeant(work, anyStitch, work.cursor, next), 0)
}
