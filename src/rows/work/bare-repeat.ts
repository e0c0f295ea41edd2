import { forSize } from '../count.ts'
import type { Step, StepOf, Where } from '../step.ts'
import { heightInChains } from '../terms/stitch.ts'
import { stitchOfParts } from './from-hook.ts'

const leading = new Set<Step['kind']>(['chain', 'turn', 'remark', 'slip', 'join', 'ring'])
const quiet = new Set<Step['kind']>(['remark', 'skip', 'turn'])
const mostStarts = 8

function goesIntoSpace(where: Where): boolean {
  return 'of' in where && where.of.every((accept) => accept.kind === 'space' || accept.kind === 'gap')
}

/** `3 ch, 1 tr in the next, 2 tr in the next`: a chain as high as the stitch after it, with nothing skipped, stands for one. */
function standsForStitch(chain: StepOf<'chain'>, rest: readonly Step[], size: number): boolean {
  if (chain.counting !== null) return true
  const first = rest.find((step) => step.kind === 'work')
  if (first?.kind !== 'work' || rest.some((step) => step.kind === 'skip') || goesIntoSpace(first.where)) return false
  const stitch = stitchOfParts(first.parts)
  return stitch !== null && heightInChains[stitch.base] === forSize(chain.count, size)
}

/** Whether a chain at the beginning of the row is made again in each repeat: where the words after it end in no chain. */
function isRepeated(body: readonly Step[], chain: StepOf<'chain'>, first: number, size: number): boolean {
  const rest = body.slice(first)
  const last = rest.findLast((step) => !quiet.has(step.kind))
  return last?.kind !== 'chain' && !standsForStitch(chain, rest, size)
}

/** Whether it says something that steps come out so: one stitch alone comes out on any row. */
function tells(body: readonly Step[]): boolean {
  return body.length > 1 && body.some((step) => /^(?:skip|chain|together)$/.test(step.kind))
}

/**
 * Where the body of a repeat without a mark may begin, the likeliest first: with all that is no turning
 * chain; what comes out decides between them.
 *
 *     4 ch, 1 dc in the next loop; repeat      from the chain on
 *     3 ch, 1 tr, 2 ch, miss 2; repeat         after the first chain
 */
export function bodyStarts(body: readonly Step[], size: number): readonly number[] {
  const found = body.findIndex((step) => !leading.has(step.kind))
  const first = Math.max(0, found)
  const before = body.slice(0, first).findLastIndex((step) => step.kind === 'chain')
  const later = Array.from({ length: Math.max(1, body.length - first) }, (_, index) => first + index).filter(
    (start) => start === first || tells(body.slice(start)),
  )
  const chain = body[before]
  if (chain?.kind !== 'chain') return later.slice(0, mostStarts)
  const starts = isRepeated(body, chain, first, size) ? [before, ...later] : [first, before, ...later.slice(1)]
  return starts.slice(0, mostStarts)
}
