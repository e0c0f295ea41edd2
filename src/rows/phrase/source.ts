import type { Phrase, Reader } from '../reader.ts'
import { atClauseEnd, attempt, numberAt, spanSince, take } from '../reader.ts'
import type { Source, Step } from '../step.ts'
import { takePattern } from './pattern.ts'
import { readPiece } from './piece-named.ts'
import { passEdge } from './row-ends.ts'

const turning =
  '(?:(?:turn|rotate|turning|rotating|flip) (?:(?:your|the|work|piece|it|180|degrees|°|clockwise|around|#) )*(?:to |and )?)?'
const working =
  '(?:(?:now|then|next|and) )*(?:(?:work|working|worked|continue|continuing|cont|crochet|crocheting|go|going|start|starting|begin|beginning|proceed) )*(?:(?:back|down|up|now|to|round) )*'
const along = '(?:(?:along|on|onto|in|into|across|over|around|at|to|of|through|down|up|from) )+(?:the )?'
const free = '(?:free|unused|unworked|remaining|rem|loose|exposed)'
const foundation =
  '(?:(?:the|your|each|all|same|first|original|initial|foundation|fdn|fnd|beg|beginning|start|starting|base) )*(?:foundation|ch|chs|chain|chains|piece|row|edge|sts?|stitches)(?: (?:row|edge|chain|ch))?'
const side = '(?:other|opposite|free|second|bottom|underside|reverse|unworked)'
const ofFoundation = `(?: (?:of|along|on|in|from) ${foundation})?`

/** Whole words from the first one ahead. */
function turnOfPhrase(words: string): RegExp {
  return new RegExp(`^${words}(?= |$)`)
}

/** `working along the opposite side of the foundation chain` */
const otherSide = turnOfPhrase(
  `${turning}${working}${along}${side} (?:side|edge|end|half|loops?|lps?|chs?|chains?)(?! from)${ofFoundation}`,
)
/** `Other side: sc 2`, `now along the underside: sc in next ch` */
const otherSideAlone = turnOfPhrase(
  `${turning}${working}(?:(?:along|on|down|up|around|in|to) )*(?:the )?(?:(?:other|opposite|second) side${ofFoundation}|underside|bottom)(?= [:,])`,
)
/** `rotate and work along the bottom of the chain`, `in free loops of foundation ch` */
const underneath = turnOfPhrase(
  `${turning}${working}${along}(?:bottom|underside|${free} (?:loops?|lps?|sides?|edge|chs?)) (?:of|on|from|along) ${foundation}`,
)
/** `working along foundation ch`, and behind a place `of foundation` */
const alongFoundation = turnOfPhrase(
  `${turning}${working}(?:(?:along|across|on|of|around) )+(?:the |your )*(?:foundation|original)(?: (?:ch|chs|chain|chains|edge|row))?`,
)
/** `working in the free front loops of Rnd 3` */
const freeOfRow = turnOfPhrase(
  `${working}(?:behind (?:the )?[a-z]+ )?${along}(?:${free} )*(?:(?:front|back) )?(?:loops?|lps?) (?:only )?(?:left )?(?:of|from|in|on) (?:the )?(?:rnd|round|row)`,
)
const freeOnly = turnOfPhrase(`${working}${along}${free} (?:front |back )?(?:loops?|lps?)(?: only)?`)
/** `working behind the petals in the stitches of Rnd 2` */
const ofRow = turnOfPhrase(
  `${working}(?:behind|in back of|in front of) (?:(?:the|all|rnd|round|row|#|,|[a-z]+) ){0,6}?(?:in|into|of|on|around) (?:(?:the|each|posts?|of) )*(?:sts?|stitches|scs?|dcs?|hdcs?|trs?) (?:of|on|from|in) (?:the )?(?:rnd|round|row)`,
)
/** `behind Rnd 4 in Rnd 2` */
const behind = turnOfPhrase(
  `${working}(?:behind|in back of) (?:(?:the|all|rnd|round|row|#|,|[a-z]+) ){0,6}?(?:in|into|of|on) (?:rnd|round|row)`,
)
/** `join yarn in the underarm`, `in the centre of the underarm chain` */
const underarm = turnOfPhrase(
  '(?:(?:with|a|sl|st|ss|at|in|into|to|from) )*(?:the )?(?:(first|next|center|centre|middle|any|#|[0-9]+(?:st|nd|rd|th)) )?(?:(?:of|ch|chain|st|sts|chs) )*(?:(?:of|at|on|in) )?(?:the |an |any )?(?:underarm|armhole|armpit|thumbhole|thumb hole|thumb opening|thumb gap)(?: (?:chs?|chains?|sts?|edge|opening|corner|side|gap|space))*',
)

function otherSideOf(reader: Reader): Source | null {
  const found =
    takePattern(reader, otherSide) ??
    takePattern(reader, otherSideAlone) ??
    takePattern(reader, underneath) ??
    takePattern(reader, alongFoundation)
  return found === null ? null : { kind: 'otherSide' }
}

/** The number of the row that the words ended with; null, and nothing taken, where none follows. */
function rowOf(reader: Reader, pattern: RegExp, kind: 'freeLoops' | 'row'): Source | null {
  if (takePattern(reader, pattern) === null) return null
  const row = numberAt(reader)
  if (row === null) return null
  reader.at += 1
  return { kind, row: row.count }
}

function looseLoops(reader: Reader): Source | null {
  return takePattern(reader, freeOnly) === null ? null : { kind: 'freeLoops', row: null }
}

const opening = turnOfPhrase(
  '(?:working|work) (?:in|into|along|around|across|on|over) (?:[a-z#]+ ){0,6}?(?:skipped|underarm|underarms|armhole|thumbhole|thumb|held|parked)(?: [a-z#-]+){0,8}?(?= [,;.:]|$)',
)

/** `working in the skipped sts and underarm chs,` */
function aroundOpening(reader: Reader): Source | null {
  return takePattern(reader, opening) === null ? null : { kind: 'opening', from: 'chain' }
}

/** Where a clause says that the row goes on. */
function sourceAhead(reader: Reader): Source | null {
  return (
    attempt(reader, otherSideOf) ??
    attempt(reader, (inner) => rowOf(inner, freeOfRow, 'freeLoops')) ??
    attempt(reader, (inner) => rowOf(inner, ofRow, 'row')) ??
    attempt(reader, (inner) => rowOf(inner, behind, 'row')) ??
    attempt(reader, looseLoops) ??
    attempt(reader, aroundOpening)
  )
}

/**
 * A clause that turns to other places than those of the row below.
 *
 *     working along opposite side of foundation ch, sc in each ch     in free loops of Rnd 3, …     behind petals of Rnd 4, …
 *     ^
 */
export const sourcePhrase: Phrase = {
  name: 'source',
  opens: (reader) => takesTo.test(reader.words[reader.at]?.text ?? ''),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const piece = attempt(reader, readPiece)
    if (piece !== null) return [piece]
    const source = sourceAhead(reader)
    if (source !== null) return [{ kind: 'source', source, at: spanSince(reader, from) }]
    // `Along long edge, …` says where the stitches go that are counted after it.
    return attempt(reader, edgeClause) ? [{ kind: 'remark', counting: null, at: spanSince(reader, from) }] : null
  },
}

/** `rotate work 90 degrees to work`: around a corner of the piece, which is no turn of the row. */
const quarterTurn =
  /^(?:turn|rotate|turning|rotating)(?: (?:your|the|work|piece|it))* # ?(?:degrees|°)(?: (?:clockwise|counterclockwise|counter-clockwise))?(?: (?:to|and) (?:work|start|begin|continue|working))?(?= |$)/

function edgeClause(reader: Reader): true | null {
  const turns = takePattern(reader, quarterTurn) !== null
  take(reader, 'working', 'work')
  const edge = passEdge(reader)
  return (edge || turns) && atClauseEnd(reader) ? true : null
}

const takesTo =
  /^(?:along|down|up|around|now|then|and|next|turn|rotate|turning|rotating|flip|work|working|worked|continue|continuing|cont|crochet|crocheting|go|going|start|starting|begin|beginning|proceed|back|along|on|onto|in|into|across|over|at|to|behind|from|other|opposite|the)$/

/** After a place: `each ch on opposite side of foundation ch`, `next 6 sts of Rnd 2` where the row is not the one below. */
export function readSourceAfter(reader: Reader): Step | null {
  const from = reader.at
  const source = attempt(reader, otherSideOf)
  return source === null ? null : { kind: 'source', source, at: spanSince(reader, from) }
}

/** `join yarn in centre of underarm`: a round around an opening begins there. */
export function readUnderarm(reader: Reader): Step | null {
  const from = reader.at
  const match = takePattern(reader, underarm)
  if (match === null) return null
  const place = match[1] ?? ''
  const at = spanSince(reader, from)
  return { kind: 'source', source: { kind: 'opening', from: /^(?:cent|mid)/.test(place) ? 'middle' : 'chain' }, at }
}
