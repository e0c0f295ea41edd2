import type { Adjustable, OwnNumber } from '../pattern.ts'

/** What differs between what a reader may change as it is now and as it was published. */
export function ownNumbers(now: readonly Adjustable[], published: readonly Adjustable[]): OwnNumber[] {
  return now.flatMap((each, index) => {
    const before = published[index]
    if (before === undefined || isSame(each, before)) return []
    return [{ label: each.label, own: each.text, published: before.text }]
  })
}

function isSame(one: Adjustable, other: Adjustable): boolean {
  if (one.kind === 'length') {
    return other.kind === 'length' && one.bySize.every((cell, size) => cell === other.bySize[size])
  }
  if (other.kind === 'length') return false
  return one.stitches?.count === other.stitches?.count && one.rows?.count === other.rows?.count
}
