import type { Spread } from './spread.ts'

/** A change and the plain stitches after it. */
type Unit = number

/** Units that stand one after the other, worked `times` times. */
interface Group {
  readonly units: readonly Unit[]
  readonly times: number
}

/** More units than this are not looked for in a bracket: nobody would follow them. */
const longestGroup = 6

/**
 * The steps of a row, each stitch named: `sc in next 5 sts, (2 sc in next st, sc in next 12 sts) 6 times, …`.
 * `stitch` is an abbreviation of the draft's terms.
 */
export function spreadWords({ change, plain }: Spread, stitch: string): string {
  const [lead = 0, ...units] = plain
  const shaped = change === 'dec' ? `${stitch}2tog` : `2 ${stitch} in next st`
  const unitWords = (unit: Unit): string => [shaped, ...plainWords(unit, stitch)].join(', ')
  const groups = grouped(units).map(({ units: own, times }) => {
    const words = own.map(unitWords).join(', ')
    return times === 1 ? words : `(${words}) ${times === 2 ? 'twice' : `${times} times`}`
  })
  return [...plainWords(lead, stitch), ...groups].join(', ')
}

function plainWords(count: number, stitch: string): readonly string[] {
  if (count === 0) return []
  return [count === 1 ? `${stitch} in next st` : `${stitch} in next ${count} sts`]
}

/** Bracketed where units come again at once; of two ways, the one that covers more. */
function grouped(units: readonly Unit[]): readonly Group[] {
  const groups: Group[] = []
  for (let at = 0; at < units.length; ) {
    const group = widestAt(units, at)
    groups.push(group)
    at += group.units.length * group.times
  }
  return groups
}

function widestAt(units: readonly Unit[], at: number): Group {
  let widest: Group = { units: units.slice(at, at + 1), times: 1 }
  for (let length = 1; length <= longestGroup && at + 2 * length <= units.length; length += 1) {
    const times = timesOf(units, at, length)
    if (times > 1 && times * length > widest.units.length * widest.times) {
      widest = { units: units.slice(at, at + length), times }
    }
  }
  return widest
}

function timesOf(units: readonly Unit[], at: number, length: number): number {
  let end = at + length
  while (end < units.length && units[end] === units[end - length]) end += 1
  return Math.floor((end - at) / length)
}
