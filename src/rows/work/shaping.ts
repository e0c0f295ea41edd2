import { forSize } from '../count.ts'
import { stitchNumber } from '../fabric.ts'
import type { StepOf, Target } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'
import { stitchKey } from '../terms/stitch.ts'
import { cutTo, push } from './lay.ts'
import { settleOpening } from './opening.ts'
import { advance, countMeant } from './place.ts'
import type { Stop, Work } from './state.ts'
import { add } from './tally.ts'

const anyPlace: Target = [{ kind: 'stitch', said: true }]

/** So many stitches, spread as evenly as can be over the places gone into. */
function makePlain(work: Work, stitch: Stitch, count: number, at: StepOf<'evenly'>['at']): Stop | null {
  const { into } = work
  const number = stitchNumber(work.kinds, stitch)
  add(work.tally, stitchKey(stitch), count)
  work.stitches += count
  if (!work.traces) return push(work, number, count, -1, at, -1)
  for (let made = 0; made < count; made += 1) {
    const stop = push(work, number, 1, -1, at, into[Math.floor((made * into.length) / count)] ?? -1)
    if (stop !== null) return stop
  }
  return null
}

/** The row has been worked to its end, and is said to have more or fewer stitches: they go in anywhere. */
function changeMade(work: Work, step: StepOf<'evenly'>, by: number): Stop | null {
  if (by >= 0) return makePlain(work, step.stitch, by, step.at)
  if (work.stitches + by < 0) return { why: 'too few', at: step.at, wanted: `${-by} stitches`, there: work.stitches }
  cutTo(work.made, Math.max(0, work.made.places.length + by))
  work.stitches += by
  add(work.tally, stitchKey(step.stitch), by)
  return null
}

export function workEvenly(work: Work, step: StepOf<'evenly'>): Stop | null {
  const settled = settleOpening(work)
  if (settled !== null) return settled
  work.into = []
  const by = step.change * forSize(step.count, work.size)
  const there = countMeant(work, anyPlace, work.cursor, work.end)
  const asked = step.over === null ? there : forSize(step.over, work.size)
  // A chain that counts is one of the stitches that the words name.
  const opening = work.stitches === work.turningStitches ? work.turningStitches : 0
  const over = asked === there + opening ? there : asked
  if (there === 0 && step.over === null && work.stitches > 0) return changeMade(work, step, by)
  if (over > there) return { why: 'too few', at: step.at, wanted: `${over} stitches`, there }
  // A decrease needs two stitches for each.
  if (over + opening + by < -by || over + by < 0) {
    return { why: 'too few', at: step.at, wanted: `${-2 * by} stitches`, there: over + opening }
  }
  advance(work, anyPlace, over)
  return makePlain(work, step.stitch, over + by, step.at)
}

/** Stitches along an edge: its row ends are not counted, so the words are taken at their number. */
export function workPickUp(work: Work, step: StepOf<'pickUp'>): Stop | null {
  const settled = settleOpening(work)
  if (settled !== null) return settled
  work.into = []
  const there = countMeant(work, anyPlace, work.cursor, work.end)
  work.cursor = work.end
  if (step.count !== null) return makePlain(work, step.stitch, forSize(step.count, work.size), step.at)
  // How many is left to the eye: the stated count tells, else as many as there are places on this side.
  if (work.statedTotal !== null && work.leftOpen === null) {
    work.leftOpen = step
    return null
  }
  work.byEye = true
  return makePlain(work, step.stitch, there, step.at)
}

/** The stitches that were left to the eye, now that all others of the row are known. */
export function fillOpen(work: Work): Stop | null {
  const { leftOpen, statedTotal } = work
  if (leftOpen === null || statedTotal === null) return null
  work.leftOpen = null
  return makePlain(work, leftOpen.stitch, Math.max(0, statedTotal - work.stitches), leftOpen.at)
}

/** Two layers folded on each other: each stitch closes a place of both. One left over in the fold is closed with the rest. */
export function workLayers(work: Work, step: StepOf<'layers'>): Stop | null {
  const settled = settleOpening(work)
  if (settled !== null) return settled
  work.into = []
  const there = countMeant(work, anyPlace, work.cursor, work.end)
  const asked = step.count === null ? Math.floor(there / 2) : forSize(step.count, work.size)
  if (2 * asked > there + 1)
    return { why: 'too few', at: step.at, wanted: `${2 * asked} stitches in two layers`, there }
  advance(work, anyPlace, Math.min(2 * asked, there))
  work.leaveSaid = true
  return makePlain(work, step.stitch, asked, step.at)
}
