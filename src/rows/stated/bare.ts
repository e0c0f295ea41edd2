import type { Word } from '../words.ts'
import type { FoundCounts, GivenWords } from './given.ts'
import { isMark, textOf, trimmed } from './given.ts'
import type { StatedItem } from './item.ts'
import { readItems } from './items.ts'

/** How far back a count without brackets is looked for, in words. */
const farthest = 40

/** Words at depth 0, from `end` backwards. */
function* backwards(words: readonly Word[], end: number): Generator<number> {
  let depth = 0
  for (let at = end - 1; at >= 0 && end - at < farthest; at -= 1) {
    const text = textOf(words, at)
    if (/^[)\]}]$/.test(text)) depth += 1
    if (/^[([{]$/.test(text)) depth -= 1
    if (depth < 0) return
    if (depth === 0) yield at
  }
}

/** Where the sentence or line that ends before `end` begins; 0 where nothing stands before it. */
function sentenceStart({ all, opensLine }: GivenWords, end: number): number {
  for (const at of backwards(all, end)) {
    const word = all[at]
    if (word !== undefined && opensLine(word) && at > 0) return at
    if (word?.text === '.' && at < end - 1) return at + 1
  }
  return 0
}

/** After these a line goes on: `sc in next` / `18 sc, …` */
const goesOn = /^(?:[,;*([–-]|in|into|next|and|of|each|to|then|last|first|sk|skip|miss|ch|work|rep|from|for|with)$/

/** Whether what stands before a sentence has ended. */
function hasEnded(words: readonly Word[], from: number): boolean {
  const before = words[from - 1]
  return before !== undefined && before.kind !== 'number' && !goesOn.test(before.text)
}

export const soundsLikeCount = /^(?:total|you|you’ll|you'll|there|ending|leaving|giving|making|now|for|has|have|which)$/

/** The clause before a mark ends the round or row: `join in first sc: 72 sc`, `…, fasten off; 72 sc`. */
function closesRow(words: readonly Word[], mark: number): boolean {
  let start = mark
  while (start > 0 && !/^[,;.:*)\]]$/.test(textOf(words, start - 1))) start -= 1
  if (textOf(words, start) === 'and') start += 1
  const first = textOf(words, start)
  return /^(?:join|joining|fasten|ss)$/.test(first) || (/^(?:sl|slip)$/.test(first) && start > 0)
}

const rowEnd = /^(?:around|across|end|row|rnd|round|unworked|off|turn|join|times|more|once|twice)$/

/** `Rep Rows 8 and 9—40 sc`: the number before the dash is a row's, and no range begins there. */
function namesRows(words: readonly Word[], mark: number): boolean {
  const before = words.slice(Math.max(0, mark - 4), mark)
  return words[mark + 2]?.kind === 'word' && before.some((word) => /^(?:rows?|rnds?|rounds?)$/.test(word.text))
}

/** Whether a mark may stand before a count. */
function mayLead({ all }: GivenWords, mark: number): boolean {
  const text = textOf(all, mark)
  const glued = all[mark]?.glued === true && all[mark + 1]?.glued === true
  if (/^(?:=>?|→)$/.test(text)) return true
  // `2–3` is a range, `turn—52 sc` a count.
  if (text === '–' || text === '-') {
    // `top of ch - 3`
    if (/^(?:chs?|chains?)$/.test(textOf(all, mark - 1)) && text === '-') return false
    // `rows 2 – 4`
    const range = all[mark - 1]?.kind === 'number' && /^(?:rows?|rnds?|rounds?)$/.test(textOf(all, mark - 2))
    if (range && all[mark + 2]?.kind !== 'word') return false
    return !glued || (text === '–' && (all[mark - 1]?.kind === 'word' || namesRows(all, mark)))
  }
  if (text === '/') return textOf(all, mark - 1) === '/'
  if (text === ':') return closesRow(all, mark) || rowEnd.test(textOf(all, mark - 1))
  if (text !== ';' && text !== ',') return false
  if (closesRow(all, mark) || (text === ';' && rowEnd.test(textOf(all, mark - 1)))) return true
  return soundsLikeCount.test(textOf(all, mark + 1)) || /^(?:sts?|stitch|stitches|total)$/.test(textOf(all, mark + 2))
}

/** `… around for a total of 18 sts` */
function totals(words: readonly Word[], at: number): boolean {
  const next = textOf(words, at + 1) === 'a' ? 2 : 1
  return textOf(words, at) === 'for' && textOf(words, at + next) === 'total'
}

/** `repeat, ending with 1 dc`: the last stitches of a repeat, not how many there are. */
function endsRepeat(words: readonly Word[], at: number): boolean {
  if (!/^(?:ending|end|finishing|finish)$/.test(textOf(words, at)) || textOf(words, at + 1) !== 'with') return false
  return words.slice(Math.max(0, at - 8), at).some(({ text }) => /^rep(?:eat|eating)?$/.test(text))
}

/** `…; 3 chain, unite`: chains to be made. */
function areChains(items: readonly StatedItem[]): boolean {
  return items.every(({ of }) => of.kind === 'key' && of.key === 'chain')
}

/** A sentence that is a count, or ends in one after a sign, up to `end`. */
export function bareCounts(given: GivenWords, end: number): FoundCounts | null {
  const { all, vocabulary } = given
  const [, last] = trimmed(all, 0, end)
  const start = sentenceStart(given, last)
  const [first] = trimmed(all, start, last)
  if (start > 0 && hasEnded(all, start)) {
    const items = endsRepeat(all, first) ? null : readItems(all.slice(first, last), vocabulary)
    if (items !== null && !areChains(items)) return { from: start, to: end, items, bare: true }
  }
  for (const at of backwards(all, last)) {
    const isSign = all[at]?.kind === 'mark'
    if (isSign && endsRepeat(all, at + 1)) continue
    if (at <= first || at === last - 1 || !(isSign ? mayLead(given, at) : totals(all, at))) continue
    const items = readItems(all.slice(...trimmed(all, isSign ? at + 1 : at, last)), vocabulary)
    const from = textOf(all, at) === '/' ? at - 1 : at
    if (items !== null && !areChains(items)) return { from, to: end, items, bare: !isMark(textOf(all, at)) }
  }
  return null
}
