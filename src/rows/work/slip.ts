import type { Span } from '../../diagnostic/index.ts'
import { forSize } from '../count.ts'
import { stitchNumber } from '../fabric.ts'
import type { StepOf, Where } from '../step.ts'
import { ahead, isUnderWay, picotAt, toChainFromHook, workPicot } from './from-hook.ts'
import { push } from './lay.ts'
import { settleOpening } from './opening.ts'
import { beginSpoke, beginsSpoke } from './spoke.ts'
import type { Stop, Work } from './state.ts'
import { goTo } from './where.ts'

export function workSlip(work: Work, step: StepOf<'slip'>): Stop | null {
  const { at } = step
  const where = step.where.kind === 'fromHook' && isUnderWay(work, step.where) ? ahead(work, step.where) : step.where
  if (where.kind === 'fromHook') {
    if (beginsSpoke(work, where, true)) {
      beginSpoke(work, where, true)
      return null
    }
    if (picotAt(work, forSize(where.nth, work.size)) && work.opening === null) return workPicot(work)
    const stop = toChainFromHook(work, where, [], at)
    work.slips += 1
    return stop
  }
  const settled = settleOpening(work)
  if (settled !== null) return settled
  const started = work.made.places.length > 0
  const atFirst = where.kind === 'first' || where.kind === 'turningChain' || (where.kind === 'same' && where.start)
  if (started && atFirst) {
    if (work.below?.circular === true || work.cursor >= work.end) {
      work.joined = true
      return null
    }
  }
  if (where.kind === 'ring') return null
  if (started && comesRound(work, where)) {
    work.joined = true
    return null
  }
  if (step.yarn === true) work.yarnJoined = true
  return travel(work, where, at, started)
}

/** `…, sl st in next st; rep from * around`: after the last stitch of a round the next one is the first. */
function comesRound(work: Work, where: Where): boolean {
  if (where.kind !== 'next' || forSize(where.count, work.size) !== 1 || work.joined) return false
  // Pass by pass there must be a place for each.
  if (work.loops > 0 && work.firstTaken) return false
  return work.below?.circular === true && !work.below.ring && work.cursor >= work.end - work.passed && work.cursor > 1
}

/** `*sl st in next st, hdc in next st; rep from *` in a flat row: the slip stitches are stitches of the fabric. */
function isFabric(work: Work, where: Where, started: boolean): boolean {
  return started && work.loops > 0 && where.kind === 'next' && work.below?.circular === false && !work.below.foundation
}

function layFlat(work: Work, places: number, at: Span): Stop | null {
  const slip = stitchNumber(work.kinds, { base: 'slipStitch', style: 'plain' })
  for (let place = 0; place < places; place += 1) {
    const stop = push(work, slip, 1, -1, at, work.into[place] ?? -1)
    if (stop !== null) return stop
  }
  return null
}

/** A joined round stands on its first stitch already: `next` is the second. */
function travel(work: Work, where: Where, at: Span, started: boolean): Stop | null {
  if (!started && work.joinedBelow && work.cursor === 0 && work.last < 0 && where.kind === 'next') {
    const [first] = where.of
    if (first?.kind === 'stitch' && work.below !== null && work.below.places.length > 1) {
      work.last = 0
      work.cursor = 1
    }
  }
  return goTo(work, where, at, (places) => {
    // Only a row of nothing but slip stitches has them as its stitches.
    work.slips += places
    for (const base of work.into) {
      work.slippedInto.push(base)
      work.slippedAfter.push(work.made.places.length)
    }
    return isFabric(work, where, started) ? layFlat(work, places, at) : null
  })
}
