import type { Span } from '../../diagnostic/index.ts'
import { joinedTo } from '../fabric.ts'
import type { Source } from '../step.ts'
import type { Finished, Stop, Work } from './state.ts'

type Named = Extract<Source, { readonly kind: 'piece' }>

const ordinalWords: readonly RegExp[] = [
  /\b(?:first|1st|one|1|left)\b/i,
  /\b(?:second|2nd|two|2|right)\b/i,
  /\b(?:third|3rd|3)\b/i,
]

/** Pieces whose title has the noun, the oldest first. */
function candidates(work: Work, noun: string): readonly Finished[] {
  const has = new RegExp(`\\b${noun}s?\\b`, 'i')
  const found = work.finished.filter((each) => has.test(each.name))
  return found.length > 0 ? found : work.finished.slice(-2)
}

/** `here` for the piece that the row stands on. One piece made twice is both: the one on the hook, and its fellow. */
function pieceFor(work: Work, { which, noun }: Named): { readonly key: string; readonly piece: Finished } | null {
  const all = candidates(work, noun)
  const here = all.find((each) => each.here)
  const away = all.filter((each) => !each.here)
  const [only] = all
  if (only === undefined || which === 'same') return here === undefined ? null : { key: 'here', piece: here }
  if (all.length === 1) return which === 2 && only.here ? { key: 'here', piece: only } : { key: 'fellow', piece: only }
  if (which === 'other') {
    const other = away.at(-1)
    return other === undefined ? null : { key: other.name, piece: other }
  }
  const named = all.find((each) => ordinalWords[which - 1]?.test(each.name)) ?? all[which - 1]
  if (named === undefined) return null
  return { key: named.here ? 'here' : named.name, piece: named }
}

/** Turns to another piece, or back to one at the place where it was left. */
export function workPiece(work: Work, source: Named, at: Span): Stop | null {
  const found = pieceFor(work, source)
  if (found === null || work.below === null) return { why: 'no such place', at, wanted: `${source.noun}s made before` }
  if (found.key === work.stretch) return null
  const left = { key: work.stretch, cursor: work.cursor, end: work.end }
  const known = work.stretches.find((each) => each.key === found.key)
  work.stretches = [...work.stretches.filter((each) => each.key !== found.key), left]
  work.stretch = found.key
  work.sub = 0
  if (known === undefined) {
    work.cursor = work.below.places.length
    work.below = { ...joinedTo(work.below, found.piece.row), circular: true }
    work.end = work.below.places.length
  } else {
    work.cursor = known.cursor
    work.end = known.end
  }
  return null
}
