import { nearestTo } from '../diagnostic/index.ts'
import { sizeNames } from '../measure/index.ts'
import { check } from './check.ts'
import { reportMix } from './mixing.ts'
import type { Scope } from './scope.ts'
import { report, sizeByName } from './scope.ts'
import type { Sort } from './sort.ts'
import { joinSorts } from './sort.ts'
import type { BySizeNode, Expression, ListNode } from './tree.ts'

export function checkList(node: ListNode, scope: Scope): Sort | null {
  const sizes = scope.environment.sizes
  const sort = checkAlike(node.items, scope)
  if (node.items.length === sizes.length) return sort
  return report(scope, 'list-length', node.at, { given: node.items.length, sizes })
}

export function checkBySize(node: BySizeNode, scope: Scope): Sort | null {
  const named = checkSizeNames(node, scope)
  const sort = checkAlike(
    node.entries.map((entry) => entry.value),
    scope,
  )
  return named ? sort : null
}

/** One sort for all; reports the first that does not fit the ones before it. */
export function checkAlike(nodes: readonly Expression[], scope: Scope): Sort | null {
  let first: { readonly node: Expression; readonly sort: Sort } | null = null
  let sound = true
  for (const node of nodes) {
    const sort = check(node, scope)
    if (sort === null) sound = false
    if (sort === null || !sound) continue
    const joined: Sort | null = first === null ? sort : joinSorts(first.sort, sort)
    if (joined === null && first !== null) return reportMix(scope, ',', first, { node, sort }, node.at)
    if (joined !== null) first = { node: first === null || first.sort === 'none' ? node : first.node, sort: joined }
  }
  return sound ? (first?.sort ?? 'none') : null
}

function checkSizeNames(node: BySizeNode, scope: Scope): boolean {
  const { environment } = scope
  const seen = new Set<number>()
  let sound = true
  for (const entry of node.entries) {
    const size = sizeByName(environment, entry.size)
    if (size === -1) sound = reportSize(scope, entry) !== null
    else if (seen.has(size)) sound = report(scope, 'size-twice', entry.at, { size: entry.size }) !== null
    seen.add(size)
  }
  const missing = environment.sizes.flatMap((_, size) => (seen.has(size) ? [] : [size]))
  if (!sound || missing.length === 0) return sound
  return report(scope, 'sizes-missing', node.at, { names: sizeNames(environment.sizes, missing) }, missing) !== null
}

/** Reports a name that no size has. */
export function reportSize(scope: Scope, given: { readonly size: string; readonly at: BySizeNode['at'] }): null {
  const { sizes } = scope.environment
  return report(scope, 'size-unknown', given.at, { size: given.size, nearest: nearestTo(given.size, sizes), sizes })
}
