import type { Content } from './content.ts'
import type { ReadRow } from './cut.ts'
import { wordsOf } from './row-words.ts'
import type { Counting, Step } from './step.ts'
import type { Word } from './words.ts'
import type { OpeningRules } from './work/state.ts'

/*
 * What the words of all rows tell about opening chains before any row is worked: a remark on one of them is meant for
 * the others of its length too, and a chain into whose top a later row works counts as a stitch.
 */

function stepsOf(content: Content | null): readonly (readonly Step[])[] {
  if (content === null || content.kind === 'reference') return []
  if (content.kind === 'bySize') return content.options.flatMap(stepsOf)
  if (content.kind === 'schedule') return [content.even, ...content.legs.map((leg) => leg.last)]
  return [content.steps]
}

/** The length of the chain that opens a row, or of those skipped at its beginning; null where it has none. */
function openingChain(steps: readonly Step[]): number | null {
  for (const step of steps) {
    if (step.kind === 'chain') {
      const hook = steps.find((each) => each.kind === 'work' && each.where.kind === 'fromHook')
      if (hook === undefined) return step.count[0] ?? null
    }
    if (step.kind === 'work') {
      if (step.where.kind !== 'fromHook') return null
      const nth = step.where.nth[0] ?? null
      return nth === null ? null : nth - 1
    }
  }
  return null
}

/** The remarks on chains in a row, with the length of each. */
function* remarks(steps: readonly Step[]): Generator<readonly [chains: number, counting: Counting]> {
  for (const step of steps) {
    if (step.kind === 'chain' && step.counting !== null) yield [step.count[0] ?? 0, step.counting]
    if (step.kind === 'work' && step.where.kind === 'fromHook' && step.where.counting !== null)
      yield [(step.where.nth[0] ?? 1) - 1, step.where.counting]
  }
}

/** What rows say of their opening chains, by length, where all agree. */
function saidAnywhere(all: readonly (readonly Step[])[]): ReadonlyMap<number, Counting> {
  const found = new Map<number, Counting>()
  const disputed = new Set<number>()
  for (const [chains, counting] of all.flatMap((steps) => [...remarks(steps)])) {
    const before = found.get(chains)
    if (before !== undefined && before.counts !== counting.counts) disputed.add(chains)
    found.set(chains, before ?? counting)
  }
  for (const chains of disputed) found.delete(chains)
  return found
}

/**
 * Opening chains into whose top a row works: `top of beg ch-3`, `3rd ch of ch-4`. They count, unless
 * the pattern says otherwise.
 */
function topsNamed(words: readonly Word[], into: Set<number>): void {
  for (let at = 1; at < words.length; at += 1) {
    if (words[at]?.text !== 'of' || !/^(?:top|chs?|chain)$/.test(words[at - 1]?.text ?? '')) continue
    let next = at + 1
    while (/^(?:the|beg|beginning|turning|starting|first|skipped|t)$/.test(words[next]?.text ?? '')) next += 1
    if (!/^(?:ch|chain)$/.test(words[next]?.text ?? '')) continue
    if (words[next + 1]?.text === '-') next += 1
    const number = words[next + 1]
    const chains = number?.kind === 'number' ? (number.count[0] ?? null) : null
    if (chains !== null) into.add(chains)
  }
}

/** Chains into whose top the row after theirs works without naming their length: `dc in top of turning ch`. */
function topsMeant(rows: readonly ReadRow[], into: Set<number>): void {
  let before: number | null = null
  for (const { content, opensSection } of rows) {
    const own = stepsOf(content)
    if (before !== null && !opensSection && own.some((steps) => wordsOf(steps).namesTurningChain)) into.add(before)
    const [steps] = own
    if (steps !== undefined) before = openingChain(steps)
  }
}

/** What the words of rows tell about opening chains. */
export function openingsIn(rows: readonly ReadRow[]): Omit<OpeningRules, 'said'> {
  const topsUsed = new Set<number>()
  for (const row of rows) topsNamed(row.words, topsUsed)
  topsMeant(rows, topsUsed)
  return { topsUsed, elsewhere: saidAnywhere(rows.flatMap(({ content }) => stepsOf(content))) }
}
