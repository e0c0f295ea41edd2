import type { Shape, Shaped, ShapingName, ShapingProblem } from '../../formula/index.ts'
import { shareOf } from '../../measure/index.ts'
import { curve, slant } from './curve.ts'
import { evenlyWords } from './evenly.ts'
import type { Planned, Schedule } from './schedule.ts'
import { scheduleWords } from './schedule-words.ts'
import { spread } from './spread.ts'
import { spreadWords } from './spread-words.ts'
import type { Manner } from './taper.ts'
import { taper } from './taper.ts'
import { waist } from './waist.ts'
import { yoke } from './yoke.ts'

/** What an argument may be. */
interface Range {
  readonly least: number
  readonly most: number
}

const stitches: Range = { least: 1, most: 20_000 }
const change: Range = { least: -20_000, most: 20_000 }
/** More changes than this, written out one by one, nobody follows. */
const written: Range = { least: -500, most: 500 }
const rows: Range = { least: 1, most: 2_000 }
const parts: Range = { least: 1, most: 200 }

interface Phrase {
  readonly ranges: readonly Range[]
  readonly shape: (counts: readonly number[], words: readonly string[]) => Shaped
}

const phrases: Readonly<Record<ShapingName, Phrase>> = {
  evenly: {
    ranges: [change, stitches],
    shape: ([by = 0, over = 0]) => said(spread(by, over), () => evenlyWords(by, over)),
  },
  spaced: {
    ranges: [written, stitches],
    shape: ([by = 0, over = 0], [stitch = '']) => said(spread(by, over), (plan) => spreadWords(plan, stitch)),
  },
  taper: {
    ranges: [stitches, stitches, rows],
    shape: ([from = 0, to = 0, over = 0], words) => scheduled(taper(from, to, over, mannerOf(words))),
  },
  waist_taper: {
    ranges: [stitches, stitches, stitches, rows],
    shape: ([from = 0, narrow = 0, to = 0, over = 0], words) =>
      scheduled(waist(from, narrow, to, over, mannerOf(words))),
  },
  armhole_steps: {
    ranges: [stitches, rows],
    shape: ([sts = 0, over = 0], words) =>
      scheduled(curve(sts, over, mannerOf(words).oneEnd ? 'armhole edge' : 'each end')),
  },
  neck_steps: { ranges: [stitches, rows], shape: ([sts = 0, over = 0]) => scheduled(curve(sts, over, 'neck edge')) },
  shoulder_steps: { ranges: [stitches, rows], shape: ([sts = 0, over = 0]) => scheduled(slant(sts, over)) },
  yoke_rounds: {
    ranges: [stitches, stitches, rows, parts],
    shape: ([from = 0, to = 0, over = 0, times = 0]) => scheduled(yoke(from, to, over, times)),
  },
  shares: {
    ranges: [stitches, parts],
    shape: ([total = 0, among = 0]) => ({ words: sharesWords(total, among), problem: null }),
  },
}

/** Writes a shaping phrase for one size in the trade's words, or says why it cannot be worked. */
export const shape: Shape = (name, counts, words) => {
  const phrase = phrases[name]
  const problem = outOfRange(phrase.ranges, counts)
  return problem === null ? phrase.shape(counts, words) : { words: null, problem }
}

function outOfRange(ranges: readonly Range[], counts: readonly number[]): ShapingProblem | null {
  for (const [argument, { least, most }] of ranges.entries()) {
    const found = counts[argument] ?? 0
    if (found < least || found > most) return { kind: 'range', argument, found, least, most }
  }
  return null
}

function mannerOf(words: readonly string[]): Manner {
  return {
    oneEnd: words.includes('one end'),
    unit: words.includes('rounds') ? 'rnd' : 'row',
    eitherSide: words.includes('either side'),
  }
}

function said<T>(outcome: Planned<T>, words: (plan: T) => string): Shaped {
  return outcome.problem === null
    ? { words: words(outcome.plan), problem: null }
    : { words: null, problem: outcome.problem }
}

function scheduled(outcome: Planned<Schedule>): Shaped {
  return said(outcome, scheduleWords)
}

function sharesWords(total: number, among: number): string {
  return Array.from({ length: among }, (_, index) => shareOf(total, among, index + 1)).join(', ')
}
