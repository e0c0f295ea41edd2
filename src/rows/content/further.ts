import type { Span } from '../../diagnostic/index.ts'
import { takePattern } from '../phrase/pattern.ts'
import type { Reader } from '../reader.ts'
import { attempt, passClause, spanSince, take } from '../reader.ts'
import type { Step } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'
import type { Extent } from './extent.ts'
import { readExtent } from './extent.ts'
import { readTail } from './tail.ts'

/** Rows that go on growing, or shrinking, as the last one did. */
export interface Further {
  readonly stitch: Stitch
  readonly extent: Extent | null
  readonly then: readonly Step[]
  readonly at: Span
}

const manner = '(?:in (?:this|the same|same) (?:way|manner|fashion)|as established|as set|as before|thus|likewise)'
const shapes = '(?:increas(?:e|ing)|decreas(?:e|ing)|inc|dec)'
const goesOn = '(?:(?:keep|continue|cont|continuing|work|working)(?: on)?(?: to)?)'
/** `Continue increasing in this way` */
const shaping = new RegExp(
  `^(?:${goesOn} ${shapes}|${shapes})(?: # (?:sts?|stitches|\\w+)(?: (?:in|on|per|each|every)(?: (?:each|every|the))? (?:rnd|round|row))?)?(?: ${manner})(?= |$)`,
)
/** `Continue as established, working 1 more dc between incs on each rnd` */
const established = new RegExp(`^${goesOn} ${manner}(?= ,)`)
const oneMore =
  /^(?:, )?(?:and )?(?:always |by )?(?:working|work|with|adding|having|there will be) (?:#|one|an additional|an extra) (?:more )?(?:\w+ ){1,3}?(?:between|before|in between|after)(?= )/

/**
 * Shaping that goes on as the rows before have it, without its numbers.
 *
 *     Continue increasing in this way, working 1 more sc between increases in each rnd.
 *     ^
 */
export function readFurther(reader: Reader): Further | null {
  const from = reader.at
  const shaped = takePattern(reader, shaping) !== null
  if (!shaped && takePattern(reader, established) === null) return null
  const more = takePattern(reader, oneMore) !== null
  if (more) passClause(reader)
  if (!(shaped || more)) return null
  const at = spanSince(reader, from)
  take(reader, ',')
  const extent = attempt(reader, readExtent)
  const then = readTail(reader)
  return then === null ? null : { stitch: reader.stitch, extent, then, at }
}
