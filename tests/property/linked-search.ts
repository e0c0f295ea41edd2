import type { Counts, Draft, Link, Need } from './linked-draft.ts'

/** Counts beyond this are not tried. */
export const most = 30

/** A linked count of one size. */
interface Cell {
  readonly link: Link
  readonly size: number
}

interface Found {
  readonly cells: readonly Cell[]
  readonly best: Counts | null
}

/**
 * The counts that the rules ask for, found by trying every combination; for each group of counts that needs join, null
 * where none fits. Errors are compared exactly: as whole numbers over a common denominator. A need across sizes joins
 * them only when it does not hold anyway.
 */
export function exhaustive(draft: Draft, joining: ReadonlySet<Need> = new Set()): readonly Found[] {
  const needs = draft.needs.filter((need) => !need.across || joining.has(need))
  const found = groupsOf({ ...draft, needs }).map(({ cells, asked }) => ({ cells, best: bestOf(cells, asked, draft) }))
  const left = draft.needs.filter((need) => !needs.includes(need) && need.uses.every((name) => isChosen(name, found)))
  const broken = left.filter((need) => !need.holds(laidTogether(found, draft), 0))
  return broken.length === 0 ? found : exhaustive(draft, new Set([...joining, ...broken]))
}

function isChosen(name: string, found: readonly Found[]): boolean {
  return found.every(({ cells, best }) => best !== null || cells.every(({ link }) => link.name !== name))
}

function laidTogether(found: readonly Found[], { links, sizes }: Draft): Counts {
  const count = (name: string, size: number) =>
    found.find(({ cells }) => cells.some((cell) => cell.link.name === name && cell.size === size))?.best?.[name]?.[size]
  return Object.fromEntries(links.map(({ name }) => [name, sizes.map((_, size) => count(name, size) ?? Number.NaN)]))
}

interface Asked {
  readonly need: Need
  readonly size: number
}

function groupsOf({ links, needs, sizes }: Draft): readonly { cells: readonly Cell[]; asked: readonly Asked[] }[] {
  const cells = links.flatMap((link) => sizes.map((_, size): Cell => ({ link, size })))
  const asked = needs.flatMap((need) => (need.across ? [{ need, size: 0 }] : sizes.map((_, size) => ({ need, size }))))
  const groups = new Map(cells.map((cell) => [cell, new Set([cell])]))
  for (const { need, size } of asked) {
    const joined = cells.filter(({ link, size: own }) => need.uses.includes(link.name) && (need.across || own === size))
    const all = new Set(joined.flatMap((cell) => [...(groups.get(cell) ?? [])]))
    for (const cell of all) groups.set(cell, all)
  }
  return [...new Set(groups.values())].map((group) => ({
    cells: cells.filter((cell) => group.has(cell)),
    asked: asked.filter(({ need, size }) =>
      [...group].some(({ link, size: own }) => need.uses.includes(link.name) && (need.across || own === size)),
    ),
  }))
}

function bestOf(cells: readonly Cell[], asked: readonly Asked[], { sizes }: Draft): Counts | null {
  let best: { readonly score: readonly number[]; readonly counts: Counts } | null = null
  const counts: Record<string, number[]> = {}
  for (const { link } of cells) counts[link.name] = sizes.map(() => Number.NaN)
  const common = cells.reduce((product, cell) => product * (targetOf(cell) || 1), 1)
  const visit = (index: number, errors: readonly number[]): void => {
    const cell = cells[index]
    if (cell === undefined) {
      if (!asked.every(({ need, size }) => need.holds(counts, size))) return
      const chosen = cells.map(({ link, size }) => counts[link.name]?.[size] ?? Number.NaN)
      const score = [errors.reduce((sum, error) => sum + error, 0), Math.max(...errors), ...chosen]
      if (best === null || isLess(score, best.score)) best = { score, counts: structuredClone(counts) }
      return
    }
    for (const count of candidates(cell)) {
      const own = counts[cell.link.name]
      if (own !== undefined) own[cell.size] = count
      visit(index + 1, [...errors, errorOf(cell, count, common)])
    }
  }
  visit(0, [])
  return best === null ? null : (best as { counts: Counts }).counts
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  const apart = a.findIndex((value, index) => value !== b[index])
  return apart !== -1 && (a[apart] ?? 0) < (b[apart] ?? 0)
}

/** In halves of a stitch. */
function targetOf({ link, size }: Cell): number {
  return link.targets[size] ?? 0
}

function errorOf(cell: Cell, count: number, common: number): number {
  const target = targetOf(cell)
  // A target of 0 is missed by whole stitches.
  return target === 0 ? count * common : (Math.abs(2 * count - target) * common) / target
}

function* candidates(cell: Cell): Generator<number> {
  const { of, plus, direction } = cell.link
  for (let count = 0; count <= most; count += 1) {
    const onGrid = (count - plus) % of === 0
    const onSide = direction === '' || (direction === ' up' ? 2 * count >= targetOf(cell) : 2 * count <= targetOf(cell))
    if (onGrid && onSide) yield count
  }
}
