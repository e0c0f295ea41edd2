import { shareOf } from '../../measure/index.ts'
import type { Passage, Planned, Schedule } from './schedule.ts'
import { evenRows, planned, refused } from './schedule.ts'

/**
 * A yoke in rounds that widens in a few of them: these are spaced over the depth as equally as whole rounds allow, the
 * last of them the last round, and share the increases.
 */
export function yoke(from: number, to: number, rounds: number, times: number): Planned<Schedule> {
  if (to < from) return refused({ kind: 'direction', from, to })
  if (times > rounds) return refused({ kind: 'rows', shaped: times, rows: rounds })
  if (times > to - from) return refused({ kind: 'stitches', needed: times, there: to - from })
  const passages: Passage[] = []
  let [stitches, done] = [from, 0]
  for (let which = 1; which <= times; which += 1) {
    const by = shareOf(to - from, times, which)
    if (by > stitches) return refused({ kind: 'stitches', needed: by, there: stitches })
    const round = Math.floor((which * rounds) / times)
    stitches += by
    passages.push(...evenRows(round - done - 1), { kind: 'around', by, to: stitches })
    done = round
  }
  return planned({ unit: 'rnd', passages })
}
