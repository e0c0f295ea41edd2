import type { Span } from '../../diagnostic/index.ts'
import { forSize } from '../count.ts'
import type { Part, Special } from '../step.ts'
import { stitchKey } from '../terms/stitch.ts'
import type { Stop, Work } from './state.ts'
import { add, push } from './state.ts'

/** Where what is made belongs: the group it is made in, and whether it is part of a special stitch. */
export interface Within {
  readonly group: number
  readonly special: boolean
}

export const alone: Within = { group: -1, special: false }

function tally(work: Work, key: string, by: number, within: Within): void {
  add(work.tally, key, by)
  if (within.special) add(work.inside, key, by)
}

function makeStitches(work: Work, part: Part & { kind: 'stitch' }, within: Within, at: Span): Stop | null {
  const count = forSize(part.count, work.size)
  tally(work, stitchKey(part.stitch), count, within)
  work.stitches += count
  return push(work, { what: 'stitch', stitch: part.stitch, name: null, turning: false }, count, within.group, at)
}

/** Chains between stitches: a space that later rows work into. */
export function makeSpace(work: Work, chains: number, within: Within, at: Span): Stop | null {
  if (chains === 0) return null
  tally(work, `space:${chains}`, 1, within)
  return push(work, { what: 'space', chains, grouped: within.group >= 0 }, 1, within.group, at)
}

/** A new group: the stitches of one place, or of one special stitch. */
export function openGroup(work: Work, name: string): number {
  work.made.names.push(name)
  return work.made.names.length - 1
}

function makeSpecial(work: Work, special: Special, within: Within, at: Span): Stop | null {
  tally(work, `special:${special.name}`, 1, within)
  const group = openGroup(work, special.name)
  if (special.makes === 'one stitch') {
    work.stitches += 1
    return push(work, { what: 'stitch', stitch: null, name: special.name, turning: false }, 1, group, at)
  }
  if (!Array.isArray(special.makes)) return null
  return makeParts(work, special.makes, { group, special: true }, at)
}

/** A special stitch worked over several places has steps; `isSpread` ones are run as steps, not made in a place. */
export function isSpread(special: Special): boolean {
  return special.makes !== 'one stitch' && 'steps' in special.makes
}

function makePart(work: Work, part: Part, within: Within, at: Span): Stop | null {
  switch (part.kind) {
    case 'stitch':
      return makeStitches(work, part, within, at)
    case 'chain':
      return makeSpace(work, forSize(part.count, work.size), within, at)
    case 'special': {
      for (let made = 0; made < forSize(part.count, work.size); made += 1) {
        const stop = makeSpecial(work, part.special, within, at)
        if (stop !== null) return stop
      }
      return null
    }
    case 'picot':
      return closePicot(work)
  }
}

/** A closed picot is no space: the chains before it, if they stand as one, are taken back. */
export function closePicot(work: Work): Stop | null {
  const number = work.made.places.at(-1)
  const kind = number === undefined ? undefined : work.kinds.list[number]
  if (kind?.what === 'space') {
    work.made.places.pop()
    work.made.groups.pop()
    add(work.tally, `space:${kind.chains}`, -1)
  }
  return null
}

export function makeParts(work: Work, parts: readonly Part[], within: Within, at: Span): Stop | null {
  for (const part of parts) {
    const stop = makePart(work, part, within, at)
    if (stop !== null) return stop
  }
  return null
}

/** How many things go into the place: a group of two or more is remembered as one. */
function isGroup(work: Work, parts: readonly Part[]): boolean {
  const [only, ...others] = parts
  if (only === undefined) return false
  return others.length > 0 || (only.kind === 'stitch' && forSize(only.count, work.size) > 1)
}

/** Makes all that goes into one place. */
export function makeInPlace(work: Work, parts: readonly Part[], at: Span): Stop | null {
  return makeParts(work, parts, isGroup(work, parts) ? { group: openGroup(work, ''), special: false } : alone, at)
}
