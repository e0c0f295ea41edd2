import type { Phrase } from '../reader.ts'
import { passClause, spanSince, take, takeNumber, takeStitch, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { takePattern } from './pattern.ts'

/**
 * Stitches taken up along an edge.
 *
 *     pick up and sc 20 along long edge     pick up 24 sts evenly around neck
 *     ^
 */
export const pickUpPhrase: Phrase = {
  name: 'pick up',
  opens: (reader) => /^(?:pick|picking|pu)$/.test(textAt(reader)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    if (takePattern(reader, /^(?:pick(?:ing)? up|pu)(?: and)?(?: (?:work|crochet|make))?(?= |$)/) === null) return null
    const before = takeNumber(reader)
    const stitch = takeStitch(reader)
    const count = before ?? takeNumber(reader)
    const any = take(reader, 'st', 'sts', 'stitch', 'stitches')
    if (stitch === null && !any) return null
    if (stitch !== null) reader.stitch = stitch
    // Where they are taken up: `evenly along the front edge`.
    passClause(reader, 'and')
    return [{ kind: 'pickUp', stitch: stitch ?? reader.stitch, count, at: spanSince(reader, from) }]
  },
}
