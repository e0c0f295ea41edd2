import type { Row } from '../fabric.ts'
import type { Part, Step, Target, Where } from '../step.ts'
import { padded } from './lay.ts'
import type { Snapshot } from './snapshot.ts'
import type { Work } from './state.ts'
import { mostSteps, mostStitches } from './state.ts'
import type { Tally } from './tally.ts'
import { add } from './tally.ts'

/*
 * A repetition is mostly the same pass over the same places. Where the steps look at nothing but the
 * places that they use, and the places ahead are like those just used, the pass is copied, not worked.
 */

const known = new WeakMap<readonly Step[], boolean>()

/** Whether steps look at no place but those that they use. */
export function looksNoFurther(steps: readonly Step[]): boolean {
  const before = known.get(steps)
  if (before !== undefined) return before
  const found = steps.every(isNear)
  known.set(steps, found)
  return found
}

function isNear(step: Step): boolean {
  switch (step.kind) {
    case 'chain':
    case 'remark':
      return true
    case 'skip':
      return step.where.kind === 'next' && isNearTarget(step.where.of)
    case 'together':
      return isNearPlace(step.where)
    case 'work':
      return isNearPlace(step.where) && step.parts.every(isNearPart)
    case 'sequence':
      return looksNoFurther(step.body)
    default:
      return false
  }
}

/** A picot takes back chains, whoever made them; a special stitch over several places has steps of its own. */
function isNearPart(part: Part): boolean {
  if (part.kind === 'picot') return false
  if (part.kind !== 'special' || part.special.makes === 'one stitch') return true
  return Array.isArray(part.special.makes) && part.special.makes.every(isNearPart)
}

function isNearPlace(where: Where): boolean {
  return where.kind === 'next' ? isNearTarget(where.of) : where.kind === 'same'
}

/** Corners and special stitches are told by what lies around them. */
function isNearTarget(target: Target): boolean {
  return target.every((accept) => !/^(?:corner|gap|special|run|middle)$/.test(accept.kind))
}

/** How many passes ahead find what the last one found, which used `uses` places. */
function alikeAhead(work: Work, row: Row, uses: number): number {
  let at = work.cursor
  while (at < work.end && row.places[at] === row.places[at - uses]) at += 1
  return Math.floor((at - work.cursor) / uses)
}

/** Before the row's first stitch a pass settles more than its own steps. */
function isUnderWay({ scalars, places }: Snapshot): boolean {
  return places > 0 && scalars.opening === null && scalars.last >= 0 && scalars.sub === 0
}

/**
 * Copies the pass of `body` that has been worked since `before`, up to `most` times. The last two passes
 * that are like it are left to be worked: the words after the repetition may need them back.
 *
 * @returns how often it was copied; 0 where the next pass may differ
 */
export function copyPasses(work: Work, body: readonly Step[], before: Snapshot, most: number): number {
  const row = work.below
  const uses = work.cursor - before.scalars.cursor
  if (row === null || uses === 0 || work.sub > 0 || !isUnderWay(before) || !looksNoFurther(body)) return 0
  const steps = work.steps - before.scalars.steps
  const made = work.made.places.length - before.places
  const passes = Math.min(
    most,
    alikeAhead(work, row, uses) - 2,
    Math.floor((mostSteps - work.steps) / steps),
    made === 0 ? most : Math.floor((mostStitches - work.made.places.length) / made),
  )
  if (passes <= 0) return 0
  copyMade(work, before, passes, uses)
  copyTally(work.tally, before.tally, passes)
  copyTally(work.inside, before.inside, passes)
  work.stitches += passes * (work.stitches - before.scalars.stitches)
  work.steps += passes * steps
  work.unsaid += passes * (work.unsaid - before.scalars.unsaid)
  work.spacesPassed += passes * (work.spacesPassed - before.scalars.spacesPassed)
  if (work.skipped === work.cursor) work.skipped += passes * uses
  work.cursor += passes * uses
  work.last += passes * uses
  return passes
}

/** Places as before, each into the place so far on; groups of the pass are new groups of the same names. */
function copyMade(work: Work, before: Snapshot, passes: number, uses: number): void {
  const { places, groups, names, bases, again, loops } = work.made
  const made = places.slice(before.places)
  const named = names.slice(before.names)
  const into = bases.slice(before.places)
  const further = again.filter((each) => each.made >= before.places)
  const looped = loops.slice(before.places)
  const grouped = named.length > 0 ? padded(work.made).slice(before.places) : []
  for (let pass = 1; pass <= passes; pass += 1) {
    for (const place of made) places.push(place)
    for (const base of into) bases.push(base < 0 ? base : base + pass * uses)
    for (const each of further) again.push({ made: each.made + pass * made.length, base: each.base + pass * uses })
    for (const loop of looped) loops.push(loop)
    for (const group of grouped) groups.push(group < before.names ? group : group + pass * named.length)
    for (const name of named) names.push(name)
  }
}

/** Adds once more, for each copied pass, what the pass has added. */
function copyTally(tally: Tally, from: number, passes: number): void {
  const before = new Map<string, number>()
  for (const { key, count } of tally.replaced.slice(from)) if (!before.has(key)) before.set(key, count ?? 0)
  for (const [key, count] of before) add(tally, key, passes * ((tally.counts.get(key) ?? 0) - count))
}
