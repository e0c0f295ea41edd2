import type { Worked } from '../attempt.ts'
import type { Shape } from '../shape.ts'
import { shapeOf } from '../shape.ts'
import { stitchKey } from '../terms/stitch.ts'
import { closedKey } from '../work/make.ts'
import type { CountingRule } from './item.ts'

export function sumOf(counts: ReadonlyMap<string, number>, holds: (key: string) => boolean): number {
  let sum = 0
  for (const [key, count] of counts) if (holds(key)) sum += count
  return sum
}

export const isSpace = (key: string): boolean => key.startsWith('space:')

function chainsOf({ tally }: Worked): number {
  let chains = 0
  for (const [key, count] of tally) if (isSpace(key)) chains += count * Number(key.slice('space:'.length))
  return chains
}

/** Ways in which designers count the stitches of a row, the usual one first. */
export const totalRules: readonly CountingRule[] = ['stitches', 'no opening', 'spaces', 'chains', 'slips', 'groups']

/**
 * What a way of counting comes to: `stitches`; `no opening`: without the opening chain; `spaces` and `chains`: spaces, or
 * their chains, as stitches too; `slips`: slip stitches too; `groups` of two and more; `only …`: one kind
 * alone; `apart n`: without an opening chain of n, which is named beside.
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

export const only = 'only '

/** Stitches of a kind without the opening chain that stands for one. */
export function kindWithoutOpening(key: string, worked: Worked): number {
  return keyCount(worked, key) - (openingKey(worked) === key ? worked.turningStitches : 0)
}

/** A decrease is a stitch of its kind; some count it by its own name only. */
export const noDecreases: CountingRule = 'no decreases'

export function kindWithoutDecreases(key: string, worked: Worked): number {
  return keyCount(worked, key) - (worked.inside.get(closedKey(key)) ?? 0)
}

/** What the opening chain stands for; null where it counts as nothing. */
function openingKey({ fabric, kinds }: Worked): string | null {
  const kind = kinds.list[fabric.row?.places[0] ?? -1]
  return kind?.what === 'stitch' && kind.turning && kind.stitch !== null ? stitchKey(kind.stitch) : null
}

/** `8 dc + ch 3`: chains that are named beside the stitches and are no space of this row are those that open it. */
export function isApart(rule: CountingRule, tally: ReadonlyMap<string, number>): boolean {
  const chains = /^apart (\d+)$/.exec(rule)?.[1]
  return chains !== undefined && (tally.get(`space:${chains}`) ?? 0) === 0
}

export function keyCount(worked: Worked, key: string): number {
  const { tally } = worked
  if (key === 'space') return sumOf(tally, isSpace)
  // Beyond a foundation the chains of a row are those of its spaces: `7 sc + 3 ch`.
  return tally.get(key) ?? (key === 'chain' ? chainsOf(worked) : 0)
}

/** The shortest chain over stitches that are passed, and how many there are of them at most, and stitches to each. */
const bridge = { chains: 3, most: 2, stitches: 5 }

/** `sc in next 10, ch 6, sk 6, sc to end. (26)`: the chain over a thumb or an armhole takes the place of its stitches. */
export function withBridges({ tally, total }: Worked): number {
  let chains = 0
  let count = 0
  for (const [key, times] of tally) {
    const length = isSpace(key) ? Number(key.slice('space:'.length)) : 0
    if (length < bridge.chains) continue
    count += times
    chains += times * length
  }
  return count > 0 && count <= bridge.most && total >= bridge.stitches * count ? total + chains : total
}

export function shape(worked: Worked): Shape | null {
  const { row } = worked.fabric
  return row === null ? null : shapeOf(row, worked.kinds)
}
