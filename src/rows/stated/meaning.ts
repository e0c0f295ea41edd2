import type { Worked } from '../attempt.ts'
import type { Stated, StatedItem } from './item.ts'
import { statedFor } from './item.ts'
import type { OpenName } from './names.ts'
import { openMeanings, specialMeant, withinGroups } from './names.ts'
import {
  byRule,
  isApart,
  keyCount,
  kindWithoutDecreases,
  kindWithoutOpening,
  noDecreases,
  only,
  shape,
  sumOf,
  withBridges,
} from './ways.ts'

/** What a stated number turns out to be. `unchecked`: its name has no meaning that fits. */
export type Verdict = 'agrees' | 'differs' | 'unchecked'

/** `18 sc, 1 sc2tog`: decreases are counted apart. */
function namesDecreases({ items }: Stated): boolean {
  return items.some(({ of }) => of.kind === 'named' || (of.kind === 'key' && of.key.startsWith('together:')))
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

/** `3-dc cluster` says how many stitches each has. */
function nameOf({ of, shown }: StatedItem): OpenName {
  if (of.kind === 'named') return of
  const size = /^\d+(?=[ -]?\p{L})/u.exec(shown)?.[0]
  return { name: shown, size: size === undefined ? null : Number(size) }
}

function openVerdict(item: StatedItem, stated: number, worked: Worked): Verdict {
  for (const [meaning, count] of openMeanings(worked, nameOf(item))) {
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
      return specialMeant(of.name, worked, stated)
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
  return [worked.total, chains ?? withBridges(worked)]
}

/** Stitches inside groups that are counted by a name of their own are not counted again: `3 groups, 1 dc`. */
function besides(item: StatedItem, all: Stated, size: number, stated: number, worked: Worked): Verdict {
  const { of } = item
  if (of.kind !== 'key' && of.kind !== 'total') return 'differs'
  const key = of.kind === 'total' ? null : of.key
  const rest = (key === null ? worked.total : keyCount(worked, key)) - stated
  let found: Verdict = 'differs'
  for (const other of all.items) {
    const open = isOpen(other, worked, all) ? (statedFor(other, size) ?? 0) : 0
    if (open < 1 || rest < 1) continue
    const within = withinGroups(worked, open, key)
    if (within.includes(rest)) return 'agrees'
    const even = open > 1 && rest % open === 0 && rest / open <= mostInGroup
    if (within.length === 0 && even) found = openVerdict(other, open, worked)
  }
  return found
}

/** A name that the row itself does not use. */
function isOpen({ of }: StatedItem, worked: Worked, stated: Stated): boolean {
  return (
    of.kind === 'named' ||
    (of.kind === 'special' && specialMeant(of.name, worked, stated).every((count) => count === 0))
  )
}

/** The most stitches that a group of its own is taken to have. */
const mostInGroup = 12

/** The usual case: all stitches, or all of a kind. */
function isPlainly({ of, by }: StatedItem, stated: number, { total, tally }: Worked): boolean {
  if (by !== null) return false
  return of.kind === 'total' ? stated === total : of.kind === 'key' && stated === tally.get(of.key)
}

/** What an item of a stated count turns out to be for a size whose row has been worked. */
export function verdictOn(item: StatedItem, all: Stated, worked: Worked, size: number): Verdict {
  const stated = statedFor(item, size)
  if (stated === null || isPlainly(item, stated, worked)) return 'agrees'
  const numbers = numbersMeant(item, worked, all)
  if (numbers?.includes(stated)) return 'agrees'
  const { of } = item
  if (of.kind === 'named') return openVerdict(item, stated, worked)
  if (of.kind === 'corner') return openVerdict(item, stated, worked)
  if (of.kind === 'side') return hasEqualSides(worked) && numbers?.length !== 0 ? 'differs' : 'unchecked'
  // A stitch that the row spells out, and only the count names.
  if (of.kind === 'special' && (numbers ?? []).every((number) => number === 0)) {
    const open = openVerdict(item, stated, worked)
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
