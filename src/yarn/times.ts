const numbers: Readonly<Record<string, number>> = {
  one: 1,
  both: 2,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  twelve: 12,
}

const amount = String.raw`(?<first>\d{1,4}|${Object.keys(numbers).join('|')})(?: ?[([](?<rest>\d{1,4}(?:, ?\d{1,4})*)[)\]])?`
const heading = new RegExp(
  String.raw`\b(?:make|work)(?: another)? ${amount}(?<more> more)?(?=\s*(?:$|[),.;:]|alike|the same|identical|pieces?|times?))|[x×] ?${amount.replaceAll('?<first>', '?<times>').replaceAll('?<rest>', '?<others>')}`,
  'i',
)
const prose = new RegExp(
  String.raw`(?:^|[.\n(*] ?\*{0,2})\bmake ${amount}(?<more> more)?(?=\s*(?:$|[).]|\*|\n|alike|identical|pieces?\b|squares?\b|motifs?\b|hexagons?\b|of (?:these|them)))`,
  'i',
)
const second =
  /\b(?:make|work) (?:a |the )?second (?:one|sleeve|sock|mitten|glove|mitt|slipper|piece|panel|strap|half)\b/i

/**
 * How often a piece is made in a size: `Sleeve (make 2)`, `Motif (make 12 (16, 20))`, or `Make 3 more.` in its text; once
 * unless it says otherwise.
 *
 * @param text what stands under the heading beside its rows, placeholders already numbers
 */
export function timesMade(piece: string, text = '', size = 0): number {
  const said = heading.exec(piece) ?? prose.exec(text)
  if (said === null) return second.test(text) ? 2 : 1
  const { first, rest, times, others, more } = said.groups ?? {}
  const all = [first ?? times ?? '', ...(rest ?? others ?? '').split(',')].map((each) => each.trim())
  const own = (all.length > 2 || (all[1] ?? '') !== '' ? all[size] : all[0]) ?? all[0] ?? ''
  return (numbers[own.toLowerCase()] ?? (Number(own) || 1)) + (more === undefined ? 0 : 1)
}
