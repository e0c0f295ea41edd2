import type { Parameter } from './functions.ts'
import { factOf, isFunction, parameterAt } from './functions.ts'
import type { Expression } from './tree.ts'
import { children } from './tree.ts'

/** Where a function takes a name of another kind, with or without quotes: a swatch, a body measure, a size. */
const otherNames: ReadonlySet<Parameter | null> = new Set(['swatch', 'quoted', 'choice'])

/** The names of values that a formula uses, each once. */
export function namesIn(node: Expression): ReadonlySet<string> {
  const found = new Set<string>()
  collect(node, found)
  return found
}

function collect(node: Expression, found: Set<string>): void {
  if (node.kind === 'name') found.add(node.name)
  children(node).forEach((child, position) => {
    if (!isOtherName(node, position)) collect(child, found)
  })
}

/** Whether a name at a position below a node is that of a swatch, a body measure or the like, and no value's. */
export function isOtherName(node: Expression, position: number): boolean {
  if (node.kind !== 'call' || !isFunction(node.name) || node.arguments[position]?.kind !== 'name') return false
  return otherNames.has(parameterAt(factOf(node.name), position))
}

/** Whether a formula asks what the worked rows make. */
export function asksRows(node: Expression): boolean {
  return node.kind === 'made' || children(node).some(asksRows)
}

export interface Order {
  /** Every name that is in no circle and waits for none, after all that it uses. */
  readonly sorted: readonly string[]
  /** Names that use each other in a circle, in the order in which they do. */
  readonly circles: readonly (readonly string[])[]
}

/** Puts names in an order in which they can be calculated. `uses` gives, for each name, the names in its formula. */
export function orderOf(uses: ReadonlyMap<string, ReadonlySet<string>>): Order {
  const waiting = new Map([...uses].map(([name, used]) => [name, countKnown(used, uses)]))
  const users = usersOf(uses)
  const ready = [...waiting].flatMap(([name, count]) => (count === 0 ? [name] : []))
  for (const name of ready) {
    for (const user of users.get(name) ?? []) {
      const left = (waiting.get(user) ?? 0) - 1
      waiting.set(user, left)
      if (left === 0) ready.push(user)
    }
  }
  const sorted = new Set(ready)
  const rest = [...uses.keys()].filter((name) => !sorted.has(name))
  return { sorted: ready, circles: circlesAmong(rest, uses) }
}

function countKnown(used: ReadonlySet<string>, uses: ReadonlyMap<string, unknown>): number {
  return [...used].filter((name) => uses.has(name)).length
}

function usersOf(uses: ReadonlyMap<string, ReadonlySet<string>>): ReadonlyMap<string, readonly string[]> {
  const users = new Map<string, string[]>()
  for (const [name, used] of uses) {
    for (const other of used) {
      const list = users.get(other)
      if (list === undefined) users.set(other, [name])
      else list.push(name)
    }
  }
  return users
}

/** Each of `rest` uses another of `rest`; following one such use from name to name must end in a circle. */
function circlesAmong(
  rest: readonly string[],
  uses: ReadonlyMap<string, ReadonlySet<string>>,
): readonly (readonly string[])[] {
  const left = new Set(rest)
  const seen = new Set<string>()
  const circles: string[][] = []
  for (const start of rest) {
    const path: string[] = []
    let name: string | undefined = start
    while (name !== undefined && !seen.has(name)) {
      seen.add(name)
      path.push(name)
      name = [...(uses.get(name) ?? [])].find((used) => left.has(used))
    }
    const from = name === undefined ? -1 : path.indexOf(name)
    if (from !== -1) circles.push(path.slice(from))
  }
  return circles
}
