import type { Worked } from '../attempt.ts'
import type { Group } from '../shape.ts'
import { blocksKey } from '../work/opening.ts'
import { passesKey } from '../work/repeat.ts'
import type { Stated } from './item.ts'
import { isSpace, shape, sumOf } from './ways.ts'

const wholePrefix =
  /^(?:beg|beginning|begin|start|starting|first|initial|opening|end|ending|last|closing|final|joining|join)[ -]/
const partPrefix = /^(?:half|small|large|mini|big|little|edge|corner|inc|dec|increase|decrease|partial|inverted)[ -]/

function isKindOf(name: string, base: string, prefix: RegExp): boolean {
  return prefix.test(name) && name.replace(prefix, '') === base.toLowerCase()
}

/** Special stitches whose name is `base` with a word before it. */
function kindsOf(base: string, prefix: RegExp, { tally }: Worked): number {
  return sumOf(
    tally,
    (key) => key.startsWith(special) && isKindOf(key.slice(special.length).toLowerCase(), base, prefix),
  )
}

const special = 'special:'

/**
 * `beg puff` and `end puff` are puffs, unless the count names them apart; half and small ones may be counted among the
 * others.
 */
export function specialMeant(name: string, worked: Worked, { items }: Stated): readonly number[] {
  const own = worked.tally.get(`${special}${name}`) ?? 0
  const whole = own + kindsOf(name, wholePrefix, worked)
  const apart = items.some(({ shown }) => isKindOf(shown.toLowerCase(), name, wholePrefix))
  const all = [whole, whole + kindsOf(name, partPrefix, worked), whole + spelledOut(name, worked)]
  return apart ? [own, ...all] : all
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

/** Names of what a repeat makes once. */
const perPass =
  /petal|point|lea[fv]|ray|spoke|rep|pattern|scallop|motif|cross|pair|cable|section|wave|ripple|peak|tentacle|arm|leg|spike|wedge|segment|x-st|tooth|teeth|bump/

/** What a name of the designer's own stands for. */
export interface OpenName {
  readonly name: string
  /** The stitches of each, where the name says it. */
  readonly size: number | null
}

/** All that a name of the designer's own may stand for in this row, by what it is. */
export function openMeanings(worked: Worked, { name, size }: OpenName): ReadonlyMap<string, number> {
  const found = new Map<string, number>()
  const made = shape(worked)
  for (const { name: manner, groups } of made?.groupings ?? []) {
    for (const each of new Set(groups.map(({ stitches }) => stitches.length))) {
      if (size === null || size === each) found.set(`${manner} of ${each}`, groupsOf(groups, each, each))
    }
    if (size !== null) continue
    found.set(manner, groups.length)
    found.set(`${manner} of 3 and more`, groupsOf(groups, 3, Number.POSITIVE_INFINITY))
  }
  for (const [key, count] of worked.tally) {
    if (size === null ? /^(?:space|special|together):/.test(key) : saysSize(key, size)) found.set(key, count)
  }
  if (size !== null) return found
  found.set('spaces', sumOf(worked.tally, isSpace))
  found.set(
    'specials',
    sumOf(worked.tally, (key) => key.startsWith(special)),
  )
  const opened = worked.inside.get(blocksKey) ?? 0
  if (opened > 0) found.set('blocks', opened + (made?.groupings[0]?.groups.length ?? 0))
  if ((made?.corners ?? 0) > 0) found.set('corners', made?.corners ?? 0)
  if (partPrefix.test(`${name} `)) found.set('smaller groups', smallerGroups(made?.groupings[0]?.groups ?? []))
  if (perPass.test(name)) for (const [key, passes] of passesOf(worked)) found.set(key, passes)
  return found
}

/** `2 half shells`: groups that are smaller than the others. */
function smallerGroups(groups: readonly Group[]): number {
  const largest = Math.max(0, ...groups.map(({ stitches }) => stitches.length))
  return groups.filter(({ stitches }) => stitches.length < largest).length
}

/** `3-dc cluster`, `dc3tog`: stitches closed as one, by their number. */
function saysSize(key: string, size: number): boolean {
  return /^(?:special|together):/.test(key) && new RegExp(`(?<!\\d)${size}(?!\\d)`).test(key)
}

function passesOf({ inside }: Worked): readonly (readonly [string, number])[] {
  return [...inside.keys()].flatMap((key) =>
    key.startsWith(passesKey) ? [[key, Number(key.slice(passesKey.length))] as const] : [],
  )
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
