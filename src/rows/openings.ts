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
  if (content === null || content.kind === 'reference' || content.kind === 'further') return []
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

/** Whether some step goes into the space of the turning chain of the row below. */
function goesIntoTurningSpace(steps: readonly Step[]): boolean {
  return steps.some((step) => {
    if (step.kind === 'work' || step.kind === 'together') return step.where.kind === 'turningChain' && step.where.space
    if (step.kind === 'repeat') return goesIntoTurningSpace([...step.body, ...(step.ending ?? [])])
    if (step.kind === 'either') return step.options.some(goesIntoTurningSpace)
    return step.kind === 'sequence' && goesIntoTurningSpace(step.body)
  })
}

/** Chains into whose top or space the row after theirs works without naming their length: `dc in top of turning ch`. */
function turningChains(rows: readonly ReadRow[], tops: Set<number>, spaces: Set<number>): void {
  let before: number | null = null
  for (const { content, opensSection } of rows) {
    for (const steps of before === null || opensSection ? [] : stepsOf(content)) {
      if (goesIntoTurningSpace(steps)) spaces.add(before ?? 0)
      else if (wordsOf(steps).namesTurningChain) tops.add(before ?? 0)
    }
    const [steps] = stepsOf(content)
    if (steps !== undefined) before = openingChain(steps)
  }
}

/** What the words of rows tell about opening chains. */
export function openingsIn(rows: readonly ReadRow[]): Omit<OpeningRules, 'said'> {
  const topsUsed = new Set<number>()
  for (const row of rows) topsNamed(row.words, topsUsed)
  const spacesUsed = new Set<number>()
  turningChains(rows, topsUsed, spacesUsed)
  return { topsUsed, spacesUsed, elsewhere: saidAnywhere(rows.flatMap(({ content }) => stepsOf(content))) }
}
