import type { Reader } from '../reader.ts'
import { attempt, take, takeNumber, takeOrdinal, takeSpecial, takeStitch, textAt } from '../reader.ts'
import type { Accepts } from '../step.ts'

const groups =
  /^(?:groups?|clusters?|shells?|fans?|blocks?|scallops?|petals?|leaf|leaves|points?|vandykes?|spots?|tufts?)$/
const middles = ['middle', 'centre', 'center', 'central', 'centre-most', 'midst']

/** `middle 5 tr`, `3rd 5 tr` */
function ofSoMany(reader: Reader): Accepts | null {
  const nth = takeOrdinal(reader)
  if (nth === null && !take(reader, ...middles)) return null
  const of = takeNumber(reader)?.[0] ?? null
  if (of === null) return null
  const stitch = attempt(reader, takeStitch)
  take(reader, 'st', 'sts', 'stitch', 'stitches')
  return { kind: 'run', nth: nth?.[0] ?? null, of, stitch }
}

function ofGroup(reader: Reader): Accepts | null {
  const special = attempt(reader, takeSpecial)
  if (special !== null) return { kind: 'special', name: special.name }
  if (!groups.test(textAt(reader))) return null
  reader.at += 1
  return { kind: 'middle' }
}

/**
 * A place by where it stands among others, in the words that older turns of phrase are put into.
 *
 *     1 dc in middle-of middle 5 tr     1 dc in each middle-of scallop
 *             ^                                     ^
 */
export function amongNoun(reader: Reader): Accepts | null {
  if (!take(reader, 'middle-of')) return null
  return attempt(reader, ofSoMany) ?? ofGroup(reader)
}
