import { cornersOf, groupMiddles } from '../corners.ts'
import type { Acceptance, Kinds, PlaceKind, Row } from '../fabric.ts'
import { blockName, closedName } from '../fabric.ts'
import type { Accepts, Target } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'
import { isAmong } from './among.ts'
import { centerOf, isGap, isGroupStart, isMember, placeInGroup } from './groups.ts'
import type { Work } from './state.ts'

/** How freely the row's nouns are taken: as written, any stitch for a named one, or chains as stitches too. */
export type Freedom = 0 | 1 | 2

function isNamed(kind: PlaceKind, stitch: Stitch): boolean {
  if (kind.what !== 'stitch') return false
  if (kind.stitch === null) return false
  // A post stitch is one of its kind; asked for by its own name it must be worked that way.
  return kind.stitch.base === stitch.base && (stitch.style === 'plain' || kind.stitch.style === stitch.style)
}

/** Chains of the loop that a block is worked into. */
const blockLoop = 3
const blockNames = /^(?:block|tile|box|square)$/
const closedNames = /^(?:cluster|cl|bobble|puff|popcorn|group)$/

/** Whether the row below has spaces of so many chains between its stitches. */
function hasSpaces(work: Work, chains: number): boolean {
  return (
    work.below?.places.some((number) => {
      const kind = work.kinds.list[number]
      return kind?.what === 'space' && kind.chains === chains && kind.opening === null
    }) ?? false
  )
}

function accepts(accept: Accepts, kind: PlaceKind, work: Work): boolean {
  switch (accept.kind) {
    case 'stitch':
      return kind.what === 'stitch' || kind.what === 'chain' || kind.what === 'rowEnd'
    case 'named':
      return isNamed(kind, accept.stitch)
    case 'space':
      if (kind.what === 'stitch' && kind.name === blockName)
        return accept.chains === null || accept.chains === blockLoop
      if (kind.what !== 'space') return false
      if (accept.chains === null || accept.chains === kind.chains) return true
      // `ch-5 sp` of a ch 5 that counts as dc and ch 2, where there is no other.
      return accept.chains === kind.opening && !hasSpaces(work, accept.chains)
    case 'chain':
      return kind.what === 'chain' || kind.what === 'space'
    case 'rowEnd':
      return kind.what === 'rowEnd'
    case 'special':
      // Stitches closed as one are a cluster by whatever name.
      if (kind.what !== 'stitch') return false
      if (kind.name === blockName) return blockNames.test(accept.name)
      return kind.name === closedName && closedNames.test(accept.name)
    case 'corner':
    case 'gap':
    case 'marked':
    case 'run':
    case 'middle':
    case 'center':
      return false
  }
}

const anything: Target = [{ kind: 'stitch', said: true }]
const chainsToo: Target = [{ kind: 'stitch', said: true }, { kind: 'chain' }]

/** A loop is a stitch, too, in handbooks. */
function isLooseNoun(accept: Accepts): boolean {
  return /^(?:named|stitch|chain)$/.test(accept.kind) || (accept.kind === 'space' && accept.loop === true)
}

/** A target as the chosen freedom has it. */
export function freely(target: Target, freedom: Freedom): Target {
  if (freedom === 0) return target
  if (!target.every(isLooseNoun)) return target
  return freedom === 1 ? anything : chainsToo
}

function acceptanceOf(kinds: Kinds, target: Target): Acceptance {
  const known = kinds.accepted.get(target)
  if (known !== undefined) return known
  const simple = target.every((accept) => !/^(?:chain|special|corner|gap|marked|run|middle|center)$/.test(accept.kind))
  const fresh: Acceptance = { byKind: [], simple }
  kinds.accepted.set(target, fresh)
  return fresh
}

function acceptsKind(work: Work, target: Target, acceptance: Acceptance, number: number): boolean {
  const known = acceptance.byKind[number]
  if (known !== undefined) return known
  const kind = work.kinds.list[number]
  const accepted = kind !== undefined && target.some((accept) => accepts(accept, kind, work))
  acceptance.byKind[number] = accepted
  return accepted
}

/** Whether `target` can mean the place at a position of the row below. */
export function isMeantAt(work: Work, target: Target, at: number): boolean {
  return work.below !== null && isMeant(work, work.below, target, acceptanceOf(work.kinds, target), at)
}

/** Whether a phrase that asks for `target` can mean this place of the row below. */
function isMeant(work: Work, row: Row, target: Target, acceptance: Acceptance, at: number): boolean {
  const number = row.places[at]
  if (number === undefined) return false
  if (acceptsKind(work, target, acceptance, number)) return true
  if (acceptance.simple) return false
  for (const accept of target) {
    if (accept.kind === 'corner' && cornersOf(row, work.kinds).has(at)) return true
    if (accept.kind === 'gap' && isGap(work.kinds, row, at, accept.between)) return true
    if (accept.kind === 'special' && isOfGroup(work.kinds, row, at, accept)) return true
    if (accept.kind === 'marked' && row.marks?.includes(at) === true) return true
    if (accept.kind === 'run' && isAmong(work.kinds, row, accept, at)) return true
    if (accept.kind === 'middle' && groupMiddles(row).has(at)) return true
    if (accept.kind === 'center' && centerOf(work.kinds, row) === at) return true
  }
  return false
}

/** Whether a group begins here, or this is the one of its places that is named. */
function isOfGroup(kinds: Kinds, row: Row, at: number, accept: Accepts & { readonly kind: 'special' }): boolean {
  const { member } = accept
  return member === undefined ? isGroupStart(kinds, row, at, accept) : isMember(kinds, row, at, accept, member)
}

/** A place that has been found, and where the next search starts. */
interface Found {
  readonly at: number
  readonly cursor: number
  readonly sub: number
}

function found(work: Work, row: Row, target: Target, at: number, sub: number): Found {
  const kind = work.kinds.list[row.places[at] ?? -1]
  const special = target.find(
    (accept) => accept.kind === 'special' && accept.member === undefined && isGroupStart(work.kinds, row, at, accept),
  )
  if (special !== undefined) return { ...placeInGroup(work.kinds, row, at), sub: 0 }
  const byChain = kind?.what === 'space' && target.some((accept) => accept.kind === 'chain')
  if (byChain && sub + 1 < kind.chains) return { at, cursor: at, sub: sub + 1 }
  return { at, cursor: at + 1, sub: 0 }
}

/** A space of which some chains have been used is behind the hook for all that does not go into its chains. */
function fromHere({ cursor, sub }: Work, target: Target): number {
  return sub > 0 && target.every((accept) => accept.kind === 'space') ? cursor + 1 : cursor
}

function search(work: Work, row: Row, target: Target): Found | null {
  const acceptance = acceptanceOf(work.kinds, target)
  for (let at = fromHere(work, target); at < work.end; at += 1) {
    const sub = at === work.cursor ? work.sub : 0
    if (isMeant(work, row, target, acceptance, at)) return found(work, row, target, at, sub)
  }
  return null
}

function moveTo(work: Work, target: Target, next: Found): void {
  work.last = next.at
  work.cursor = next.cursor
  work.sub = next.sub
  work.lastTarget = target
}

/** Past up to `most` places of which the kind alone tells that they are meant. */
function advancePlainly(work: Work, row: Row, target: Target, most: number): number {
  const acceptance = acceptanceOf(work.kinds, target)
  let passed = 0
  let last = -1
  let kind = -1
  let meant = false
  for (let at = fromHere(work, target); at < work.end && passed < most; at += 1) {
    const number = row.places[at] ?? -1
    // Most places are like the one before.
    if (number !== kind) {
      kind = number
      meant = acceptsKind(work, target, acceptance, number)
    }
    if (!meant) continue
    passed += 1
    last = at
    if (work.traces) work.into.push(at)
  }
  if (passed > 0) moveTo(work, target, { at: last, cursor: last + 1, sub: 0 })
  return passed
}

/** Moves on by up to `most` places that are meant. Returns how many there were before the end. */
export function advance(work: Work, target: Target, most: number): number {
  const row = work.below
  if (row === null) return 0
  if (acceptanceOf(work.kinds, target).simple) return advancePlainly(work, row, target, most)
  let passed = 0
  while (passed < most) {
    const next = search(work, row, target)
    if (next === null) return passed
    moveTo(work, target, next)
    if (work.traces) work.into.push(next.at)
    passed += 1
  }
  return passed
}

const nextPlace: Target = [{ kind: 'stitch', said: false }, { kind: 'chain' }]

/** `sk 2` without a noun passes what comes next, a space chain by chain. */
export function skipTarget(target: Target): Target {
  return target.every((accept) => accept.kind === 'stitch' && !accept.said) ? nextPlace : target
}

/** How many places that are meant lie between two. */
export function countMeant(work: Work, target: Target, from: number, to: number): number {
  return work.below === null ? 0 : countMeantIn(work, work.below, target, from, to)
}

function countMeantIn(work: Work, row: Row, target: Target, from: number, to: number): number {
  const acceptance = acceptanceOf(work.kinds, target)
  const byChain = !acceptance.simple && target.some((accept) => accept.kind === 'chain')
  let count = 0
  for (let at = from; at < to; at += 1) {
    if (!isMeant(work, row, target, acceptance, at)) continue
    const kind = byChain ? work.kinds.list[row.places[at] ?? -1] : undefined
    count += kind?.what === 'space' ? kind.chains : 1
  }
  return count
}

/** The place of the `count`th last that is meant, at or after the cursor; -1 when there are fewer. */
export function fromEnd(work: Work, target: Target, count: number): number {
  const row = work.below
  if (row === null) return -1
  if (count === 0) return work.end
  const acceptance = acceptanceOf(work.kinds, target)
  let left = count
  for (let at = work.end - 1; at >= work.cursor; at -= 1) {
    if (!isMeant(work, row, target, acceptance, at)) continue
    left -= 1
    if (left === 0) return at
  }
  return -1
}

/** The next place that is meant, without moving; -1 when there is none. */
export function nextMeant(work: Work, target: Target): number {
  const row = work.below
  return row === null ? -1 : (search(work, row, target)?.at ?? -1)
}
