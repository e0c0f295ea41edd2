const motion =
  /\b(?:yo|yoh|yrh|wyrh|yarn over|yarn round (?:the )?hook|wrap(?: the)? yarn|insert(?:ing)? (?:the |your )?hook|(?:draw|pull)(?:ing)? (?:up|out) (?:a |an |the |one |1 )?(?:\w+ )?(?:loops?|lps?)|(?:draw|pull)(?:ing)? (?:it |the yarn |yarn |loop |hook |a loop )?through|(?:remove|drop|take)(?:ing)? (?:the |your )?(?:hook|loop|working loop)|(?:last|final) (?:loop|lp) (?:of each )?(?:\w+ )?on (?:the )?hook|(?:loops?|lps?) on (?:the )?hook|hold(?:ing)? back)\b/i

/** Whether a stitch is told by what the hands do: `yo, insert hook, pull up a loop`. */
export function tellsMotions(meaning: string): boolean {
  return motion.test(meaning)
}

const numbers: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  once: 1,
  twice: 2,
  thrice: 3,
}
const numeral = '(\\d+|one|two|three|four|five)'

function countOf(text: string | undefined): number {
  return text === undefined ? 1 : (numbers[text] ?? Number(text))
}

const nextPlaces = new RegExp(
  `\\bnext (?:${numeral} )?(?:indicated )?(?:sts?|stitch(?:es)?|sp|space|ch|chs|[hd]?t?[a-z]?[sdt][cr]s?)\\b`,
  'gi',
)

/** How often what stands at a place is done: `(…) twice`, `*…; rep from * once more`. */
function timesAt(text: string, at: number): number {
  const after = text.slice(at)
  const bracket = new RegExp(
    `^[^()[\\]]*[)\\]]\\s*(?:(?:${numeral} times|x ?(\\d+)|(twice|thrice))|(\\d+)x)( more)?`,
    'i',
  ).exec(after)
  if (bracket !== null) {
    const times = countOf((bracket[1] ?? bracket[2] ?? bracket[3] ?? bracket[4])?.toLowerCase())
    return bracket[5] === undefined ? times : times + 1
  }
  const star = new RegExp(`\\brep(?:eat)? from \\*+\\s*(?:${numeral}|(once|twice))?( more)?`, 'i').exec(after)
  if (star === null || text.lastIndexOf('*', at) < 0) return 1
  return countOf((star[1] ?? star[2])?.toLowerCase()) + (star[3] === undefined && star[2] !== 'once' ? 0 : 1)
}

/**
 * How many stitches of the row below a stitch goes into that is told by what the hands do; it closes as one.
 *
 *     Insert hook in next st, pull up a loop, insert hook in next st, pull up a loop, yo, pull through all loops: 2
 */
export function placesOfMotions(meaning: string): number {
  let places = 0
  for (const match of meaning.matchAll(nextPlaces)) {
    places += countOf(match[1]?.toLowerCase()) * timesAt(meaning, match.index)
  }
  return Math.max(1, places)
}
