import type { Worked } from '../attempt.ts'
import type { Group, Shape } from '../shape.ts'
import { shapeOf } from '../shape.ts'
import { stitchKey } from '../terms/stitch.ts'
import { closedKey } from '../work/make.ts'
import { passesKey } from '../work/repeat.ts'
import type { CountingRule, Stated, StatedItem } from './item.ts'
import { statedFor } from './item.ts'

/** What a stated number turns out to be. `unchecked`: its name has no meaning that fits. */
export type Verdict = 'agrees' | 'differs' | 'unchecked'

function sumOf(counts: ReadonlyMap<string, number>, holds: (key: string) => boolean): number {
  let sum = 0
  for (const [key, count] of counts) if (holds(key)) sum += count
  return sum
}

const isSpace = (key: string): boolean => key.startsWith('space:')

function chainsOf({ tally }: Worked): number {
  let chains = 0
  for (const [key, count] of tally) if (isSpace(key)) chains += count * Number(key.slice('space:'.length))
  return chains
}

/** Ways in which designers count the stitches of a row, the usual one first. */
export const totalRules: readonly CountingRule[] = ['stitches', 'no opening', 'spaces', 'chains', 'slips', 'groups']

/**
 * What a way of counting comes to: `stitches`; `no opening`: without the opening chain; `spaces` and `chains`: spaces, or
 * their chains, as stitches too; `slips`: slip stitches too; `groups` of two and more; `only …`: one kind alone; `apart n`: without an opening
 * chain of n, which is named beside.
 */
export function byRule(rule: CountingRule, worked: Worked): number {
  const { tally, total, turningStitches } = worked
  switch (rule) {
    case 'no opening':
      return total - turningStitches
    case 'spaces':
      return total + sumOf(tally, isSpace)
    case 'chains':
      return total + chainsOf(worked)
    case 'slips':
      return total + (tally.get('slipStitch') ?? 0)
    case 'groups':
      return shape(worked)?.groupings[0]?.groups.length ?? 0
    default:
      if (rule.startsWith(only)) return keyCount(worked, rule.slice(only.length))
      return isApart(rule, tally) ? total - turningStitches : total
  }
}

const only = 'only '

/** Stitches of a kind without the opening chain that stands for one. */
export function kindWithoutOpening(key: string, worked: Worked): number {
  return keyCount(worked, key) - (openingKey(worked) === key ? worked.turningStitches : 0)
}

/** A decrease is a stitch of its kind; some count it by its own name only. */
export const noDecreases: CountingRule = 'no decreases'

export function kindWithoutDecreases(key: string, worked: Worked): number {
  return keyCount(worked, key) - (worked.inside.get(closedKey(key)) ?? 0)
}

/** `18 sc, 1 sc2tog`: decreases are counted apart. */
function namesDecreases({ items }: Stated): boolean {
  return items.some(({ of }) => of.kind === 'named' || (of.kind === 'key' && of.key.startsWith('together:')))
}

/** What the opening chain stands for; null where it counts as nothing. */
function openingKey({ fabric, kinds }: Worked): string | null {
  const kind = kinds.list[fabric.row?.places[0] ?? -1]
  return kind?.what === 'stitch' && kind.turning && kind.stitch !== null ? stitchKey(kind.stitch) : null
}

/** `8 dc + ch 3`: chains that are named beside the stitches and are no space of this row are those that open it. */
function isApart(rule: CountingRule, tally: ReadonlyMap<string, number>): boolean {
  const chains = /^apart (\d+)$/.exec(rule)?.[1]
  return chains !== undefined && (tally.get(`space:${chains}`) ?? 0) === 0
}

function keyCount({ tally }: Worked, key: string): number {
  return key === 'space' ? sumOf(tally, isSpace) : (tally.get(key) ?? 0)
}

function shape(worked: Worked): Shape | null {
  const { row } = worked.fabric
  return row === null ? null : shapeOf(row, worked.kinds)
}

/** Stitches of one kind may be counted with those inside special stitches or without, and a post stitch by its base. */
function kindMeant(item: StatedItem, key: string, worked: Worked, stated: Stated): readonly number[] {
  const all = keyCount(worked, key)
  if (key === 'space') return [all]
  const without = item.by?.some((rule) => rule === 'no opening' || isApart(rule, worked.tally)) ?? false
  if (without) return [kindWithoutOpening(key, worked)]
  if (item.by?.includes(noDecreases)) return [kindWithoutDecreases(key, worked)]
  const within = worked.inside.get(key) ?? 0
  const posts = sumOf(worked.tally, (own) => own.endsWith(`:${key}`) && !own.startsWith('special'))
  const plain = namesDecreases(stated) ? [kindWithoutDecreases(key, worked)] : []
  return [all, all - within, all + posts, ...plain]
}

/** `beg puff` and `end puff` are puffs; half and small ones may be counted among the others. */
function specialMeant(name: string, worked: Worked): readonly number[] {
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

function sideMeant(key: string | null, worked: Worked): readonly number[] {
  const found = shape(worked)
  if (found === null || (key !== null && worked.tally.get(key) !== worked.total)) return []
  return [...new Set([...found.sides, ...found.innerSides])]
}

/** Whether all sides are alike, so that a number which is none of them is wrong. */
function hasEqualSides(worked: Worked): boolean {
  const sides = shape(worked)?.sides ?? []
  return sides.length > 2 && sides.every((side) => side === sides[0])
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

function openVerdict(item: StatedItem, size: number | null, stated: number, worked: Worked): Verdict {
  for (const [meaning, count] of openMeanings(worked, size)) {
    if (count === stated && (item.by === null || item.by.includes(meaning))) return 'agrees'
  }
  return 'unchecked'
}

/** Numbers that a count may come to, the usual one first; null where its name alone does not tell. */
function numbersMeant(item: StatedItem, worked: Worked, stated: Stated): readonly number[] | null {
  const { of, by } = item
  switch (of.kind) {
    case 'total':
      return totalMeant(by, worked)
    case 'key':
      return kindMeant(item, of.key, worked, stated)
    case 'special':
      return specialMeant(of.name, worked)
    case 'side':
      return sideMeant(of.key, worked)
    case 'corner':
    case 'named':
      return null
  }
}

function totalMeant(by: StatedItem['by'], worked: Worked): readonly number[] {
  if (by !== null) return by.map((rule) => byRule(rule, worked))
  // Of a foundation the chains are counted.
  const chains = worked.total === 0 ? worked.tally.get('chain') : undefined
  return chains === undefined ? [worked.total] : [worked.total, chains]
}

/** Stitches inside groups that are counted by a name of their own are not counted again: `3 groups, 1 dc`. */
function besides(item: StatedItem, { items }: Stated, size: number, stated: number, worked: Worked): Verdict {
  const { of } = item
  if (of.kind !== 'key' && of.kind !== 'total') return 'differs'
  const key = of.kind === 'total' ? null : of.key
  const rest = (key === null ? worked.total : keyCount(worked, key)) - stated
  let found: Verdict = 'differs'
  for (const other of items) {
    const open = isOpen(other, worked) ? (statedFor(other, size) ?? 0) : 0
    if (open < 1 || rest < 1) continue
    const within = withinGroups(worked, open, key)
    if (within.includes(rest)) return 'agrees'
    if (within.length === 0 && open > 1 && rest % open === 0 && rest / open <= mostInGroup) found = 'unchecked'
  }
  return found
}

/** Stitches of a kind in groups of which there are so many, for each way to take groups. */
function withinGroups(worked: Worked, count: number, key: string | null): readonly number[] {
  const inside = (group: Group): number => group.stitches.filter((each) => key === null || each === key).length
  return (shape(worked)?.groupings ?? []).flatMap(({ groups }) =>
    [...new Set(groups.map(({ stitches }) => stitches.length)), 0].flatMap((size) => {
      const own = size === 0 ? groups : groups.filter(({ stitches }) => stitches.length === size)
      return own.length === count ? [own.reduce((sum, group) => sum + inside(group), 0)] : []
    }),
  )
}

/** A name that the row itself does not use. */
function isOpen({ of }: StatedItem, worked: Worked): boolean {
  return of.kind === 'named' || (of.kind === 'special' && specialMeant(of.name, worked).every((count) => count === 0))
}

/** The most stitches that a group of its own is taken to have. */
const mostInGroup = 12

/** What an item of a stated count turns out to be for a size whose row has been worked. */
export function verdictOn(item: StatedItem, all: Stated, worked: Worked, size: number): Verdict {
  const stated = statedFor(item, size)
  if (stated === null) return 'agrees'
  const numbers = numbersMeant(item, worked, all)
  if (numbers?.includes(stated)) return 'agrees'
  const { of } = item
  if (of.kind === 'named') return openVerdict(item, of.size, stated, worked)
  if (of.kind === 'corner') return openVerdict(item, null, stated, worked)
  if (of.kind === 'side') return hasEqualSides(worked) && numbers?.length !== 0 ? 'differs' : 'unchecked'
  // A stitch that the row spells out, and only the count names.
  if (of.kind === 'special' && (numbers ?? []).every((number) => number === 0)) {
    const open = openVerdict(item, null, stated, worked)
    return open === 'unchecked' && of.defined ? 'differs' : open
  }
  return besides(item, all, size, stated, worked)
}

/** The items of a stated count that the worked one does not bear out. */
export function differingItems(stated: Stated, worked: Worked, size: number): readonly StatedItem[] {
  return stated.items.filter((item) => verdictOn(item, stated, worked, size) === 'differs')
}

export function isMet(stated: Stated, worked: Worked, size: number): boolean {
  return stated.items.every((item) => verdictOn(item, stated, worked, size) !== 'differs')
}

/** What the row makes of what an item counts, by the usual meaning. */
export function workedCount(item: StatedItem, worked: Worked): number {
  return numbersMeant(item, worked, { items: [item], at: { start: 0, end: 0 } })?.[0] ?? 0
}

/** Whether an item counts every stitch of the row, one by one, and maybe more. */
export function speaksOfAll({ of, by }: StatedItem, worked: Worked): boolean {
  if (of.kind === 'key') return worked.tally.get(of.key) === worked.total
  return of.kind === 'total' && (by === null || !by.some((rule) => rule.startsWith(only) || rule === 'groups'))
}
