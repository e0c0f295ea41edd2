import type { Span } from '../../diagnostic/index.ts'
import type { Count } from '../count.ts'
import { forSize } from '../count.ts'
import { closedNumber, kindNumber, specialNumber, stitchNumber } from '../fabric.ts'
import type { Part, Special } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'
import { stitchKey } from '../terms/stitch.ts'
import { cutTo, push } from './lay.ts'
import type { Stop, Work } from './state.ts'
import { mostStitches } from './state.ts'
import { add, besidesKey } from './tally.ts'

/** Where what is made belongs: the group it is made in, and whether it is part of a special stitch. */
export interface Within {
  readonly group: number
  readonly special: boolean
  /** The position in the row below that it goes into, -1 for none. */
  readonly base: number
}

export const alone: Within = { group: -1, special: false, base: -1 }

function tally(work: Work, key: string, by: number, within: Within): void {
  add(work.tally, key, by)
  if (within.special) add(work.inside, key, by)
}

function makeStitches(work: Work, stitch: Stitch, count: number, within: Within, at: Span): Stop | null {
  tally(work, stitchKey(stitch), count, within)
  work.stitches += count
  return push(work, stitchNumber(work.kinds, stitch), count, within.group, at, within.base)
}

/** Single stitches stand side by side: a whole row of them is made at once. */
function makeSideBySide(work: Work, stitch: Stitch, each: number, places: number, at: Span): Stop | null {
  const number = stitchNumber(work.kinds, stitch)
  const count = each * places
  add(work.tally, stitchKey(stitch), count)
  work.stitches += count
  if (!work.traces) return push(work, number, count, -1, at, -1)
  for (let place = 0; place < places; place += 1) {
    const stop = push(work, number, each, -1, at, work.into[place] ?? -1)
    if (stop !== null) return stop
  }
  return null
}

/** What stitches of a kind are noted under that close others: decreases. */
export function closedKey(key: string): string {
  return `closed:${key}`
}

/** Stitches closed as one; by their own name they are counted apart from what they are made of. */
export function makeClosed(
  work: Work,
  closed: { readonly stitch: Stitch; readonly name: string | null; readonly count: Count },
  within: Within,
  at: Span,
): Stop | null {
  const { stitch, name } = closed
  const count = forSize(closed.count, work.size)
  if (count === 0) return null
  tally(work, stitchKey(stitch), count, within)
  if (name !== null) tally(work, `together:${name}`, count, within)
  add(work.inside, closedKey(stitchKey(stitch)), count)
  work.stitches += count
  return push(work, closedNumber(work.kinds, stitch), count, within.group, at, within.base)
}

/** Chains between stitches: a space that later rows work into. `opening`: chains of the opening chain it is part of. */
export function makeSpace(
  work: Work,
  chains: number,
  within: Within,
  at: Span,
  opening: number | null = null,
): Stop | null {
  if (chains === 0) return null
  tally(work, `space:${chains}`, 1, within)
  const kind = kindNumber(work.kinds, { what: 'space', chains, grouped: within.group >= 0, opening })
  return push(work, kind, 1, within.group, at, -1)
}

/** A new group: the stitches of one place, or of one special stitch. */
export function openGroup(work: Work, name: string): number {
  work.made.names.push(name)
  return work.made.names.length - 1
}

/** What picots are counted under that are spelt out, by the name that the trade gives them. */
export const picotKey = 'special:picot'

function isPicot(part: Part): boolean {
  return part.kind === 'picot'
}

function makeSpecial(work: Work, special: Special, within: Within, at: Span): Stop | null {
  tally(work, `special:${special.name}`, 1, within)
  const group = openGroup(work, special.name)
  if (special.makes === 'one stitch') {
    work.stitches += 1
    add(work.inside, besidesKey(`special:${special.name}`), 1)
    return push(work, specialNumber(work.kinds, special), 1, group, at, within.base)
  }
  if (!Array.isArray(special.makes)) return null
  // Of the pattern's own picot the name is what is counted.
  if (special.makes.every(isPicot)) return closePicot(work)
  return makeParts(work, special.makes, { group, special: true, base: within.base }, at)
}

/** A special stitch worked over several places has steps; `isSpread` ones are run as steps, not made in a place. */
export function isSpread(special: Special): boolean {
  return special.makes !== 'one stitch' && 'steps' in special.makes
}

function makePart(work: Work, part: Part, within: Within, at: Span): Stop | null {
  if ('count' in part && forSize(part.count, work.size) > mostStitches)
    return { why: 'too many', at, most: mostStitches }
  switch (part.kind) {
    case 'stitch':
      return makeStitches(work, part.stitch, forSize(part.count, work.size), within, at)
    case 'chain':
      return makeSpace(work, forSize(part.count, work.size), within, at)
    case 'special': {
      for (let made = 0; made < forSize(part.count, work.size); made += 1) {
        const stop = makeSpecial(work, part.special, within, at)
        if (stop !== null) return stop
      }
      return null
    }
    case 'together':
      return makeClosed(work, part, within, at)
    case 'picot':
      tally(work, picotKey, 1, within)
      return closePicot(work)
  }
}

/** A closed picot is no space: the chains before it, if they stand as one, are taken back. */
export function closePicot(work: Work): Stop | null {
  const { made, kinds, tally, traces } = work
  const kind = kinds.list[made.places.at(-1) ?? -1]
  const chains = kind?.what === 'space' ? kind.chains : usualPicot
  if (kind?.what === 'space') {
    cutTo(made, made.places.length - 1)
    add(tally, `space:${chains}`, -1)
  }
  if (traces) made.picots.push({ after: made.places.length, chains })
  return null
}

/** Chains of a picot that does not say: common practice, no source. */
const usualPicot = 3

export function makeParts(work: Work, parts: readonly Part[], within: Within, at: Span): Stop | null {
  for (const part of parts) {
    const stop = makePart(work, part, within, at)
    if (stop !== null) return stop
  }
  return null
}

/** How many things go into the place: a group of two or more is remembered as one. */
function isGroup(work: Work, parts: readonly Part[]): boolean {
  const first = parts[0]
  if (parts.length > 1) return true
  return (first?.kind === 'stitch' || first?.kind === 'together') && forSize(first.count, work.size) > 1
}

/** Makes all that goes into one place, in each of so many places. */
export function makeInPlaces(work: Work, parts: readonly Part[], places: number, at: Span): Stop | null {
  const groups = isGroup(work, parts)
  const first = parts[0]
  if (!groups && first?.kind === 'stitch') {
    return makeSideBySide(work, first.stitch, forSize(first.count, work.size), places, at)
  }
  for (let made = 0; made < places; made += 1) {
    const base = work.into[made] ?? -1
    const within = { group: groups ? openGroup(work, '') : -1, special: false, base }
    const stop = makeParts(work, parts, within, at)
    if (stop !== null) return stop
  }
  return null
}
