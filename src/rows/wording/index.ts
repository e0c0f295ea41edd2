import type { Span } from '../../diagnostic/index.ts'
import type { Word } from '../words.ts'
import { beginnings, joins } from './beginnings.ts'
import { withoutDots } from './dotted.ts'
import { amongOthers, asides, between, loops, threads, withoutNoun } from './places.ts'
import { references, repeats } from './repeats.ts'
import { byFirstWord, rewrite } from './rewrite.ts'
import { ukStitches, usStitches } from './stitches.ts'
import { plainRows, verbs } from './verbs.ts'

const stitches = { uk: byFirstWord(ukStitches), us: byFirstWord(usStitches) }

/** What a later list looks for may come out of an earlier one. */
const passes = [
  byFirstWord([...beginnings, ...joins, ...asides]),
  byFirstWord([...verbs, ...plainRows, ...references, ...threads, ...amongOthers]),
  byFirstWord([...loops, ...between, ...repeats]),
  byFirstWord(withoutNoun),
]

/**
 * Words of a row with the abbreviations and turns of phrase of handbooks in today's wording, so that each
 * form of a step need be read in one way only. Every word keeps its place in the draft.
 *
 *     commence with 48 ch., unite; 5 long under each loop of 3 chain, repeat to the end
 *     ch 48, join; 5 tr in each ch-3 sp, rep
 *
 * @param source the draft's text in a span
 */
export function inTodaysWords(
  words: readonly Word[],
  terms: 'us' | 'uk',
  source: (span: Span) => string,
): readonly Word[] {
  const closed = rewrite(withoutDots(words, terms, source), stitches[terms])
  return passes.reduce(rewrite, closed)
}
