import type { Worked } from '../attempt.ts'
import type { Group } from '../shape.ts'
import { passesKey } from '../work/repeat.ts'
import { isSpace, shape, sumOf } from './ways.ts'

/** `beg puff` and `end puff` are puffs; half and small ones may be counted among the others. */
export function specialMeant(name: string, worked: Worked): readonly number[] {
  const { tally } = worked
  const own = tally.get(`special:${name}`) ?? 0
  const whole =
    /^special:(?:beg|beginning|begin|start|starting|first|initial|opening|end|ending|last|closing|final|joining|join)[ -]/
  const part =
    /^special:(?:half|small|large|mini|big|little|edge|corner|inc|dec|increase|decrease|partial|inverted)[ -]/
  const ends = (key: string, prefix: RegExp): boolean =>
    prefix.test(key) && key.replace(prefix, '') === name.toLowerCase()
  const wholes = own + sumOf(tally, (key) => ends(key.toLowerCase(), whole))
  return [own, wholes, wholes + sumOf(tally, (key) => ends(key.toLowerCase(), part)), wholes + spelledOut(name, worked)]
}

/** Groups of the same stitches as a special stitch of this row that are spelt out instead: `5 dc in next st (shell made)`. */
function spelledOut(name: string, worked: Worked): number {
  const groups = shape(worked)?.groupings[0]?.groups ?? []
  const text = ({ stitches }: Group): string => stitches.join()
  const own = groups.find((group) => group.name === name)
  return own === undefined ? 0 : groups.filter((group) => group.name === '' && text(group) === text(own)).length
}

function groupsOf(groups: readonly Group[], least: number, most: number): number {
  return groups.filter(({ stitches }) => stitches.length >= least && stitches.length <= most).length
}

/** All that a name of the designer's own may stand for in this row, by what it is. */
export function openMeanings(worked: Worked, size: number | null): ReadonlyMap<string, number> {
  const found = new Map<string, number>()
  const made = shape(worked)
  for (const { name, groups } of made?.groupings ?? []) {
    for (const each of new Set(groups.map(({ stitches }) => stitches.length))) {
      if (size === null || size === each) found.set(`${name} of ${each}`, groupsOf(groups, each, each))
    }
    if (size !== null) continue
    found.set(name, groups.length)
    found.set(`${name} of 3 and more`, groupsOf(groups, 3, Number.POSITIVE_INFINITY))
  }
  if (size !== null) return found
  for (const [key, count] of worked.tally) if (/^(?:space|special|together):/.test(key)) found.set(key, count)
  found.set('spaces', sumOf(worked.tally, isSpace))
  found.set(
    'specials',
    sumOf(worked.tally, (key) => key.startsWith('special:')),
  )
  for (const key of worked.inside.keys()) {
    if (key.startsWith(passesKey)) found.set(key, Number(key.slice(passesKey.length)))
  }
  if ((made?.corners ?? 0) > 0) found.set('corners', made?.corners ?? 0)
  return found
}

/** Stitches of a kind in groups of which there are so many, for each way to take groups. */
export function withinGroups(worked: Worked, count: number, key: string | null): readonly number[] {
  const inside = (group: Group): number => group.stitches.filter((each) => key === null || each === key).length
  return (shape(worked)?.groupings ?? []).flatMap(({ groups }) =>
    [...new Set(groups.map(({ stitches }) => stitches.length)), 0].flatMap((size) => {
      const own = size === 0 ? groups : groups.filter(({ stitches }) => stitches.length === size)
      return own.length === count ? [own.reduce((sum, group) => sum + inside(group), 0)] : []
    }),
  )
}
