import type { Part, Step, StepOf } from './step.ts'
import type { Word } from './words.ts'

const through = /^(?:through|thru|into|in)$/
const both = /^(?:both|two|2|all)$/
const layers = /^(?:layers?|sides?|thicknesse?s?|edges|halves|pieces|ends|rows)$/
/** `flatten and close with`, `fold in half and`: how the layers come to lie on each other. */
const laying = /^(?:flatten|flattening|flat|fold|folded|press|pinch|squash|lay|hold|holding|close|sew|working|work)$/
const ends = /^[,;.:()[\]*]$/

/** Words of `through both layers` from `at` on: how many, 0 for none. */
function layerWords(words: readonly Word[], at: number): number {
  const text = (ahead: number): string => words[at + ahead]?.text ?? ''
  if (!through.test(text(0))) return 0
  const the = text(1) === 'the' ? 1 : 0
  if (!both.test(text(1 + the))) return 0
  const of = text(2 + the) === 'the' || text(2 + the) === 'of' ? 1 : 0
  return layers.test(text(2 + the + of)) ? 3 + the + of : 0
}

function clauseStart(words: readonly Word[], at: number): number {
  let start = at
  while (start > 0 && !ends.test(words[start - 1]?.text ?? '')) start -= 1
  return start
}

/** The clause that lays the layers on each other, up to the first number or the end of it. */
function layingWords(words: readonly Word[], from: number): number {
  let end = from
  while (end < words.length && !ends.test(words[end]?.text ?? '') && words[end]?.kind === 'word') {
    if (
      /^(?:ch|chain)$/.test(words[end]?.text ?? '') &&
      !/^(?:foundation|beginning|beg|starting)$/.test(words[end - 1]?.text ?? '')
    )
      break
    end += 1
  }
  return end
}

export interface Layered {
  readonly words: readonly Word[]
  readonly layered: boolean
}

/**
 * Takes out that a row closes two layers, which makes every stitch of it use a place of each.
 *
 *     working through both layers, 9 sc across   →   9 sc across
 *     flatten and close with 4 sc through both sides   →   4 sc
 */
export function withoutLayers(words: readonly Word[]): Layered {
  const at = words.findIndex((_, index) => layerWords(words, index) > 0)
  if (at < 0) return { words, layered: false }
  const length = layerWords(words, at)
  const rest = /^(?:to|together|at)$/.test(words[at + length]?.text ?? '')
    ? clauseRest(words, at + length)
    : at + length
  const kept = [...words.slice(0, at), ...words.slice(rest)]
  return { words: withoutLaying(kept, clauseStart(kept, Math.min(at, kept.length))), layered: true }
}

/** `to close the ear`, `together` after it says what it is for. */
function clauseRest(words: readonly Word[], from: number): number {
  let end = from
  while (end < words.length && !ends.test(words[end]?.text ?? '')) end += 1
  return end
}

function withoutLaying(words: readonly Word[], start: number): readonly Word[] {
  let from = start
  // `Fold in half, working through both layers, …`: the clause before lays them too.
  while (from > 0 && laying.test(words[clauseStart(words, from - 1)]?.text ?? '')) from = clauseStart(words, from - 1)
  let kept = words
  for (let at = from; at < kept.length; ) {
    const end = laying.test(kept[at]?.text ?? '') ? layingWords(kept, at) : at
    if (end > at) kept = [...kept.slice(0, at), ...kept.slice(end)]
    while (at < kept.length && !ends.test(kept[at]?.text ?? '')) at += 1
    at += 1
  }
  return kept
}

function singleStitch(parts: readonly Part[]): (Part & { kind: 'stitch' }) | null {
  const [part, ...others] = parts
  return part?.kind === 'stitch' && others.length === 0 ? part : null
}

function layeredStep(step: Step): Step {
  if (step.kind === 'repeat' || step.kind === 'sequence') return { ...step, body: inLayers(step.body) }
  if (step.kind !== 'work') return step
  return closing(step) ?? step
}

function closing({ parts, where, at }: StepOf<'work'>): Step | null {
  const part = singleStitch(parts)
  if (part === null || (where.kind !== 'next' && where.kind !== 'each')) return null
  const each = part.count
  const isOne = each.every((value) => value === 1)
  // `9 sc across` says how many; `sc across` leaves it to what is there.
  if (where.kind === 'each') return { kind: 'layers', stitch: part.stitch, count: isOne ? null : each, at }
  const count = where.count.map((value, size) => (value === null ? null : value * (each[size] ?? 1)))
  const unsaid = where.of.every((accept) => accept.kind === 'stitch' && !accept.said)
  // `sc through both layers`: as many as there are.
  if (unsaid && count.every((value) => value === 1)) return { kind: 'layers', stitch: part.stitch, count: null, at }
  return { kind: 'layers', stitch: part.stitch, count, at }
}

/** The steps of a row that closes two layers. */
export function inLayers(steps: readonly Step[]): readonly Step[] {
  return steps.map(layeredStep)
}
