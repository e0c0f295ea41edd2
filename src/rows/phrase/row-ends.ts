import type { Reader } from '../reader.ts'
import { attempt, one, take, takeNumber, takeStitch } from '../reader.ts'
import type { Accepts, Target, Where } from '../step.ts'
import { takePattern } from './pattern.ts'
import { readUntil } from './until.ts'

const rowEnd: Target = [{ kind: 'rowEnd' }]
const edges =
  'side|edge|end|neck|neckline|front|back|armhole|opening|flap|border|hem|cuff|brim|perimeter|body|heel|gusset|hood|collar|band|' +
  'curve|slope|shoulder|selvedge|selvage|bottom|top|piece|blanket|shawl|scarf|square|motif|panel'
const way = new RegExp(
  `^(?:down|up|along|across|over|around|round)(?: (?:the|left|right|other|second|first|long|short|this|that|entire|whole|each|both|` +
    `remaining|outer|inner|outside|inside|all|of|row|ends|straight|shaped|${edges}))* (?:${edges})s?(?! posts?)(?= |$)`,
)

/** `down the side edge`, `along left front edge`: the words of an edge, when they are ahead. */
export function passEdge(reader: Reader): boolean {
  return takePattern(reader, way) !== null
}

function rowWord(reader: Reader): boolean {
  if (take(reader, 'row', 'rows', 'rnd', 'rnds', 'round', 'rounds')) return true
  // `the side of each sc row`
  return attempt(reader, takeStitch) !== null && (take(reader, 'row', 'rows') || true)
}

/** `row end`, `row-ends`, and `row` where a number or `each` has said that places are meant */
export function rowEndNoun(reader: Reader): Accepts | null {
  if (take(reader, 'row-end', 'row-ends')) return { kind: 'rowEnd' }
  if (!take(reader, 'row', 'rows')) return null
  take(reader, '-')
  take(reader, 'end', 'ends', 'edge', 'edges')
  return { kind: 'rowEnd' }
}

function toEnd(reader: Reader): Where {
  passEdge(reader)
  return { kind: 'each', of: rowEnd, until: attempt(reader, readUntil) ?? { kind: 'end' } }
}

/**
 * The ends of rows, along the side of the piece: one place a row.
 *
 *     sc in end of each row     2 dc in side of next 4 rows     in ends of rows     1 sc per row
 *           ^
 */
export function readRowEnds(reader: Reader): Where | null {
  if (take(reader, 'per')) return rowWord(reader) ? toEnd(reader) : null
  take(reader, 'the')
  if (!take(reader, 'end', 'ends', 'side', 'sides', 'edge', 'edges') || !take(reader, 'of')) return null
  take(reader, 'the')
  if (take(reader, 'each', 'every', 'all')) {
    take(reader, 'of', 'the')
    const count = attempt(reader, (inner) =>
      take(inner, 'next') ? (takeNumber(inner) ?? one(inner)) : takeNumber(inner),
    )
    if (!rowWord(reader)) return null
    return count === null ? toEnd(reader) : { kind: 'next', count, of: rowEnd }
  }
  const last = take(reader, 'last')
  const said = last || take(reader, 'next', 'first', 'same')
  const count = takeNumber(reader)
  if (!rowWord(reader)) return null
  if (!said && count === null) return toEnd(reader)
  return { kind: last ? 'last' : 'next', count: count ?? one(reader), of: rowEnd }
}
