import { overAndOver } from './phrase/repeat.ts'
import type { Step, StepOf, Where } from './step.ts'

/*
 * Rows whose few words speak of the whole row: `inc. (12)`, `1 sc, 1 inc x6`. What comes out tells.
 */

const beside = new Set<Step['kind']>(['remark', 'turn', 'join', 'fastenOff', 'chain', 'ring', 'leave'])

function isUnsaidOne(where: Where, each: (size: number) => number): where is Where & { kind: 'next' } {
  if (where.kind !== 'next' || !where.of.every((accept) => accept.kind === 'stitch' && !accept.said)) return false
  return where.count.every((count, size) => count === null || count === each(size))
}

/** A bare stitch, increase or decrease with no number: `sc`, `inc`, `dec`. */
function isBare(step: Step): step is StepOf<'work'> | StepOf<'together'> {
  if (step.kind === 'together') return isUnsaidOne(step.where, (size) => step.legs[size] ?? 0)
  return step.kind === 'work' && step.parts.length === 1 && isUnsaidOne(step.where, () => 1)
}

function everywhere(step: StepOf<'work'> | StepOf<'together'>): Step {
  const of = [{ kind: 'stitch', said: false }] as const
  return { ...step, where: { kind: 'each', of, until: { kind: 'end' } } }
}

/** A row of one bare stitch means it in each stitch. */
function bareRow(steps: readonly Step[]): readonly Step[] | null {
  const making = steps.filter((step) => !beside.has(step.kind))
  const [only, ...others] = making
  if (only === undefined || others.length > 0 || !isBare(only)) return null
  const options = [[everywhere(only)], [only]]
  return steps.with(steps.indexOf(only), { kind: 'either', options, about: 'whole row', at: only.at })
}

/** `1 sc, 1 inc x6`: six increases, or six times both. */
function listTimes(steps: readonly Step[]): readonly Step[] | null {
  const at = steps.findLastIndex((step) => !beside.has(step.kind))
  const last = steps[at]
  const from = steps.findIndex((step) => !beside.has(step.kind))
  if (last?.kind !== 'repeat' || last.ofItem !== true || from >= at) return null
  const list = steps.slice(from, at)
  if (!list.every((step) => step.kind === 'work' || step.kind === 'together' || step.kind === 'skip')) return null
  const whole: Step = { ...last, body: [...list, ...last.body] }
  const either: Step = { kind: 'either', options: [[...list, last], [whole]], about: 'scope', at: last.at }
  return [...steps.slice(0, from), either, ...steps.slice(at + 1)]
}

/** `(sc, inc)` and no more: over and over. */
function bracketRow(steps: readonly Step[]): readonly Step[] | null {
  const making = steps.filter((step) => !beside.has(step.kind))
  const [only, ...others] = making
  if (only?.kind !== 'sequence' || others.length > 0 || only.body.length < 2) return null
  return steps.with(steps.indexOf(only), overAndOver(only.body, only.at))
}

/** The steps of a row, its few words taken for the whole of it where they may be. */
export function overWholeRow(steps: readonly Step[]): readonly Step[] {
  return bareRow(steps) ?? bracketRow(steps) ?? listTimes(steps) ?? steps
}
