import type { Step } from './step.ts'

const known = new WeakMap<readonly Step[], readonly number[]>()
const deepest = 60

/**
 * For each size the first one that has the same numbers in all these steps: what one of them has worked
 * serves the other. Found once for each list of steps, however often its row is repeated.
 */
export function alikeSizes(steps: readonly Step[], sizes: number): readonly number[] {
  const before = known.get(steps)
  if (before !== undefined) return before
  const all = new Array<number>(sizes).fill(0)
  const found = parted(all, steps, 0)
  known.set(steps, found)
  return found
}

/** Sizes stay alike only where `values` agree. */
function partedBy(alike: readonly number[], values: readonly unknown[]): readonly number[] {
  if (values.every((value) => value === values[0])) return alike
  return alike.map((own, size) =>
    alike.findIndex((other, earlier) => earlier === size || (other === own && values[earlier] === values[size])),
  )
}

function parted(alike: readonly number[], value: unknown, depth: number): readonly number[] {
  if (depth > deepest) return alike.map((_, size) => size)
  if (Array.isArray(value)) {
    const [first] = value
    if (typeof first === 'number' || first === null) return partedBy(alike, value)
    return value.reduce<readonly number[]>((left, each) => parted(left, each, depth + 1), alike)
  }
  if (typeof value !== 'object' || value === null) return alike
  if ('kind' in value && value.kind === 'bySize') return alike.map((_, size) => size)
  return Object.values(value).reduce<readonly number[]>((left, each) => parted(left, each, depth + 1), alike)
}
