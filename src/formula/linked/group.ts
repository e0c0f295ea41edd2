import type { Demand, Unknown } from './demand.ts'
import { countAt } from './demand.ts'
import { reachOf } from './demands.ts'

/** Linked counts that needs join, directly or through others: they are chosen together, and apart from all others. */
export interface Problem {
  readonly unknowns: readonly Unknown[]
  /** Positions of the counts in `unknowns`, in the order in which they are written and then of sizes. */
  readonly members: readonly number[]
  readonly demands: readonly Demand[]
}

/** Sorts counts and demands into problems that have nothing to do with each other. */
export function problemsOf(unknowns: readonly Unknown[], demands: readonly Demand[]): readonly Problem[] {
  const parent = unknowns.map((_, id) => id)
  const rootOf = (id: number): number => {
    const above = parent[id] ?? id
    if (above === id) return id
    const root = rootOf(above)
    parent[id] = root
    return root
  }
  const reached = demands.map((demand) => [...reachOf(demand, unknowns)])
  for (const [first, ...others] of reached) {
    if (first !== undefined) for (const other of others) parent[rootOf(other)] = rootOf(first)
  }
  const groups = new Map<number, { readonly members: number[]; readonly demands: Demand[] }>()
  for (const id of countIds(unknowns)) {
    const group = groups.get(rootOf(id))
    if (group === undefined) groups.set(rootOf(id), { members: [id], demands: [] })
    else group.members.push(id)
  }
  for (const [index, demand] of demands.entries()) {
    groups.get(rootOf(reached[index]?.[0] ?? -1))?.demands.push(demand)
  }
  return [...groups.values()].map((group) => ({ unknowns, ...group }))
}

function countIds(unknowns: readonly Unknown[]): readonly number[] {
  return unknowns.flatMap(({ kind }, id) => (kind === 'count' ? [id] : []))
}

export function namesOf({ members, unknowns }: Problem): readonly string[] {
  return [...new Set(members.flatMap((id) => countAt(unknowns, id).map(({ name }) => name)))]
}

export function sizesOf(problems: readonly Problem[]): readonly number[] {
  const sizes = problems.flatMap(({ members, unknowns }) => members.flatMap((id) => countAt(unknowns, id)))
  return [...new Set(sizes.map(({ size }) => size))].sort((a, b) => a - b)
}
