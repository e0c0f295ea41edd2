import type { Count } from '../count.ts'
import type { Part, Step, StepOf, Where } from '../step.ts'

/** Whether a step names no place: `3 dc`, `shell`. */
export function isPlaceless(where: Where): boolean {
  return (
    where.kind === 'next' &&
    where.elliptic !== true &&
    where.of.every((accepts) => accepts.kind === 'stitch' && !accepts.said)
  )
}

function product(first: Count, second: Count): Count {
  return first.map((value, size) => {
    const other = second[size] ?? null
    return value === null || other === null ? null : value * other
  })
}

function multiplied(part: Part, by: Count): Part {
  return part.kind === 'picot' ? part : { ...part, count: product(part.count, by) }
}

/** `(dc3tog, ch 3, dc3tog) in next sp`: inside a group each closes its stitches in the one place. */
function closedParts({ stitch, name, legs, where }: StepOf<'together'>): readonly Part[] | null {
  if (where.kind !== 'next' || !isPlaceless(where)) return null
  const count = where.count.map((places, size) => {
    const each = legs[size] ?? null
    return places === null || each === null || each === 0 ? null : Math.floor(places / each)
  })
  return [{ kind: 'together', stitch, name, legs, count }]
}

function partsOfStep(step: Step): readonly Part[] | null {
  switch (step.kind) {
    case 'chain':
      return [{ kind: 'chain', count: step.count }]
    case 'work':
      if (step.where.kind === 'same') return step.parts
      if (step.where.kind !== 'next' || !isPlaceless(step.where)) return null
      return step.parts.map((part) => multiplied(part, step.where.kind === 'next' ? step.where.count : []))
    case 'together':
      return closedParts(step)
    case 'slip':
      // `ch 3, sl st in 3rd ch from hook` inside a group: a picot.
      if (step.where.kind === 'fromHook') return [{ kind: 'picot' }]
      // `(sl st, ch 3, 3 dc) in next sp`: it only fastens the chain there.
      return isPlaceless(step.where) ? [] : null
    case 'remark':
      return []
    case 'sequence':
      return step.body.every((each) => each.kind === 'remark') ? [] : null
    case 'repeat': {
      const inner = partsOf(step.body)
      if (inner === null || step.times.kind !== 'exactly') return null
      const [first = null, ...rest] = step.times.count
      if (first === null || first > 100 || rest.some((value) => value !== first)) return null
      return Array.from({ length: first }, () => inner).flat()
    }
    default:
      return null
  }
}

/** What steps without a place of their own put into one place; null when one of them has its own. */
export function partsOf(steps: readonly Step[]): readonly Part[] | null {
  const parts: Part[] = []
  for (const step of steps) {
    const own = partsOfStep(step)
    if (own === null) return null
    // Chains that a picot closes are no space of their own.
    if (own[0]?.kind === 'picot' && parts.at(-1)?.kind === 'chain') parts.pop()
    parts.push(...own)
  }
  return parts
}
