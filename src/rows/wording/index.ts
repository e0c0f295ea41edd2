import type { Span } from '../../diagnostic/index.ts'
import type { Word } from '../words.ts'
import { asides, threads } from './asides.ts'
import { beginnings, joins, rings } from './beginnings.ts'
import { colours } from './colours.ts'
import { lists } from './lists.ts'
import { amongOthers, between, intoRound, loops, withoutNoun } from './places.ts'
import { references, repeats } from './repeats.ts'
import { byFirstWord, rewrite } from './rewrite.ts'
import { ofStitch, ukStitches, usStitches } from './stitches.ts'
import { plainRows, verbs } from './verbs.ts'

const inColour = byFirstWord(colours)
const stitches = { uk: byFirstWord([...ukStitches, ...ofStitch]), us: byFirstWord([...usStitches, ...ofStitch]) }

/** What a later list looks for may come out of an earlier one. */
const passes = [
  byFirstWord([...beginnings, ...joins, ...rings, ...asides]),
  byFirstWord(lists),
  byFirstWord([...verbs, ...plainRows, ...references, ...threads, ...amongOthers]),
  byFirstWord([...loops, ...intoRound, ...between, ...repeats]),
  byFirstWord(withoutNoun),
]

/** `1 s. c.`: where double crochet is the lowest stitch, single crochet is a slip stitch. Without dots it is the other terms'. */
function asSlipStitch(word: Word, source: (span: Span) => string): Word {
  return word.text === 'sc' && source(word.at).length > 2 ? { ...word, text: 'ss' } : word
}

/**
 * Words of a row with the turns of phrase of handbooks in today's wording, so that each form of a step need
 * be read in one way only. Every word keeps its place in the draft.
 *
 *     commence with 48 chain, unite; 5 long under each loop of 3 chain, repeat to the end
 *     ch 48, join; 5 tr in each ch-3 sp, rep
 *
 * @param source the draft's text in a span
 */
export function inTodaysWords(
  words: readonly Word[],
  terms: 'us' | 'uk',
  source: (span: Span) => string,
): readonly Word[] {
  const own = terms === 'uk' ? words.map((word) => asSlipStitch(word, source)) : words
  return passes.reduce(rewrite, rewrite(rewrite(own, inColour), stitches[terms]))
}
