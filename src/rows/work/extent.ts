import type { Span } from '../../diagnostic/index.ts'
import { forSize } from '../count.ts'
import type { Row } from '../fabric.ts'
import { habitKey } from '../habits.ts'
import type { Target, Until } from '../step.ts'
import { isMarked } from './marker.ts'
import type { Freedom } from './place.ts'
import { countMeant, freely, fromEnd, isMeantAt, nextMeant } from './place.ts'
import type { Stop, Work } from './state.ts'

/** Words for the places a phrase asks for, for a finding. */
export function wantedWords(target: Target): string {
  const [first] = target
  if (first === undefined) return 'stitches'
  switch (first.kind) {
    case 'stitch':
      return 'stitches'
    case 'named':
      return 'stitches of that name'
    case 'special':
      return first.name
    case 'space':
      return first.chains === null ? 'spaces' : `ch-${first.chains} spaces`
    case 'chain':
      return 'chains'
    case 'corner':
      return 'corners'
    case 'gap':
      return first.between === 'stitches' ? 'spaces between stitches' : 'spaces between groups'
    case 'marked':
      return 'marked stitches'
    case 'rowEnd':
      return 'row ends'
    case 'run':
      return `stitches among ${first.of}`
    case 'middle':
      return 'middles of groups'
    case 'center':
      return 'the middle stitch'
  }
}

/** `3 stitches`, `1 stitch` */
export function countWords(count: number, of: Target): string {
  const words = wantedWords(of)
  return count === 1
    ? `1 ${words.replace(/^stitches/, 'stitch').replace(/(chain|space|corner)s$/, '$1')}`
    : `${count} ${words}`
}

/** How freely this row's nouns are taken; a choice for the whole row, never for one phrase. */
function freedomOf(work: Work): Freedom {
  if (work.freedom !== null) return work.freedom
  // Where a row goes into spaces, their chains are no stitches.
  const chosen = work.choose('nouns', work.spacesNamed.length > 0 ? 2 : 3)
  work.freedom = chosen === 1 ? 1 : chosen === 2 ? 2 : 0
  return work.freedom
}

const betweenAny: Target = [{ kind: 'gap', between: 'any' }]
const openRows = new WeakMap<Row, boolean>()

/** Whether a row has groups and no chain space: its spaces lie between the groups. */
function hasOnlyGaps(work: Work, row: Row): boolean {
  const known = openRows.get(row)
  if (known !== undefined) return known
  const spaced = row.places.some((number) => work.kinds.list[number]?.what === 'space')
  const found = !spaced && row.groups.some((group) => group >= 0)
  openRows.set(row, found)
  return found
}

/** A target as this row takes it: nouns more or less freely, and spaces between groups where there are no others. */
export function target(work: Work, asked: Target): Target {
  const { below } = work
  const spaces = asked.every((accept) => accept.kind === 'space' && accept.chains === null && accept.loop !== true)
  if (spaces && below !== null && hasOnlyGaps(work, below)) return betweenAny
  return freely(asked, freedomOf(work))
}

/** What is told where the row below has nowhere what is asked for. */
export function noSuchPlace(of: Target, at: Span): Stop {
  // Where a corner or a marker is, is left to the rows before; none may have said it.
  if (of.some((accept) => /^(?:corner|marked|middle|center|run)$/.test(accept.kind)))
    return { why: 'unread', at, expected: 'a place that the rows before make plain' }
  return { why: 'no such place', at, wanted: wantedWords(of) }
}

/** A kind of place, other than plain stitches, that the row below has nowhere. */
export function isNowhere(work: Work, of: Target): boolean {
  return of.every((accept) => accept.kind !== 'stitch') && countMeant(work, of, 0, work.end) === 0
}

/** A stop where the row below has no such place anywhere; null where it has. */
export function nowhere(work: Work, of: Target, at: Span): Stop | null {
  return isNowhere(work, of) ? noSuchPlace(of, at) : null
}

const anyStitch: Target = [{ kind: 'stitch', said: true }]

/** The place `count` stitches before another one. */
function stitchesBefore(work: Work, place: number, count: number): number {
  let at = place
  for (let left = count; left > 0 && at > work.cursor; ) {
    at -= 1
    if (countMeant(work, anyStitch, at, at + 1) > 0) left -= 1
  }
  return at
}

/** The next marker that has not been passed. */
function nextMarked(work: Work, of: Target): number {
  const { cursor } = work
  if (work.markPassed === cursor) work.cursor += 1
  const next = nextMeant(work, of)
  work.cursor = cursor
  return next
}

/** `sl st to center sc` of a round: the stitch ahead, of whatever it is the middle. */
function isMiddleOfRound({ below }: Work, of: Target): boolean {
  return below?.circular === true && of.some((accept) => accept.kind === 'center')
}

function reached(work: Work, until: Until & { kind: 'reaching' }, at: Span): number | Stop {
  if (isMiddleOfRound(work, until.of)) return reached(work, { ...until, of: anyStitch }, at)
  const next = isMarked(until.of) ? nextMarked(work, until.of) : nextMeant(work, target(work, until.of))
  if (next >= 0) return stitchesBefore(work, next, until.before === undefined ? 0 : forSize(until.before, work.size))
  // Up to the last of them, where that ends the repeat: it lies just beyond.
  if (work.end < (work.below?.places.length ?? 0) && isMeantAt(work, target(work, until.of), work.end)) return work.end
  // The marker of a spiral hangs where its round began.
  if (isMarked(until.of) && work.below?.circular === true && work.cursor > 0) return work.end
  // The last side of a round ends where the round does.
  if (work.below?.circular === true && work.loops > 0 && countMeant(work, target(work, until.of), 0, work.cursor) > 0)
    return work.end
  return isNowhere(work, until.of)
    ? noSuchPlace(until.of, at)
    : { why: 'no such place', at, wanted: wantedWords(until.of) }
}

/** The place before so many stitches and single chains at the end of the row below. */
function withSpaces(work: Work, count: number): number {
  let left = count
  for (let at = work.end - 1; at >= work.cursor; at -= 1) {
    const kind = work.kinds.list[work.below?.places[at] ?? -1]
    if (kind?.what === 'stitch' || (kind?.what === 'space' && kind.chains === 1)) left -= 1
    if (left === 0) return at
  }
  return -1
}

/** `to last 2 sts` of a mesh: some count its single chains among the stitches. */
function orWithSpaces(work: Work, of: Target, count: number, usual: number, at: Span): number {
  if (usual < 0 || !of.every((accept) => accept.kind === 'stitch')) return usual
  const other = withSpaces(work, count)
  return other <= usual || work.choose(habitKey('last', at.start), 2) === 0 ? usual : other
}

/** Where an extent ends, as a place of the row below; a stop when there are too few. */
export function extentEnd(work: Work, until: Until, at: Span): number | Stop {
  if (until.kind === 'end') return work.end
  if (until.kind === 'reaching') return reached(work, until, at)
  const of = target(work, until.of)
  const count = forSize(until.count, work.size)
  const found = orWithSpaces(work, of, count, fromEnd(work, of, count), at)
  if (found >= 0) return found
  const there = countMeant(work, of, work.cursor, work.end)
  return { why: 'too few', at, wanted: `${countWords(count, of)} left`, there }
}
