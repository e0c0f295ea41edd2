import type { Word } from '../words.ts'
import type { GivenWords } from './given.ts'
import { nextClause, textOf, trailing } from './given.ts'

/** Clauses after a count that are looked past. */
const mostClauses = 8

/** Where a row's words may end for its count. */
export interface End {
  readonly at: number
  /** Up to here what follows says nothing, and goes with the count. */
  readonly to: number
}

const separators = /^[,;.–→/!]$/
/** Words that work something, or tell how a row ends. */
const telling =
  /^(?:ch|chs|chain|chains|sk|skip|miss|rep|repeat|inc|dec|tog|together|turn|join|fasten|leave|leaving|unworked|sl|ss|slip|\*{1,2}|st|sts|stitch|stitches)$/

/** Where the clause that ends at `end` begins: after a separator, or at the beginning of a line. */
function clauseStart({ all, opensLine }: GivenWords, end: number): number {
  let depth = 0
  for (let at = end - 1; at > 0; at -= 1) {
    const word = all[at]
    const text = word?.text ?? ''
    if (/^[)\]}]$/.test(text)) depth += 1
    if (/^[([{]$/.test(text)) depth -= 1
    if (depth < 0) return -1
    if (depth > 0) continue
    if (word !== undefined && opensLine(word)) return at
    if (separators.test(textOf(all, at - 1))) return at
    // `(40, 44, 48) Fasten off`
    if (nextClause.test(text) && endsInBracket(all[at - 1])) return at
    // `(18) <- place a marker here`
    if (text === '<' && textOf(all, at + 1) === '-') return at
  }
  return -1
}

function endsInBracket(word: Word | undefined): boolean {
  return /^[)\]}]$/.test(word?.text ?? '') || (word?.kind === 'number' && word.bracketed)
}

/** Whether a clause has no stitch, number or place: `pull the ring closed`. */
function isSilent({ all, vocabulary }: GivenWords, from: number, end: number): boolean {
  const { dictionary, specials } = vocabulary
  return all.slice(from, end).every((word) => {
    if (word.kind === 'mark') return !/^[*([{]/.test(word.text)
    return (
      word.kind === 'word' &&
      !(telling.test(word.text) || dictionary.stitches.has(word.text) || specials.has(word.text))
    )
  })
}

/** `turn`, `and fasten off`, `ch 3` before a `turn` */
function isClosing({ all }: GivenWords, from: number, end: number): boolean {
  let at = from
  while (at < end && /^(?:and|then|[-–<])$/.test(textOf(all, at))) at += 1
  if (nextClause.test(textOf(all, at))) return true
  return (
    /^(?:ch|chain)$/.test(textOf(all, at)) && all[at + 1]?.kind === 'number' && turnsAfter(all.slice(at + 2, at + 5))
  )
}

function turnsAfter(words: GivenWords['all']): boolean {
  return words.some((word, at) => word.text === 'turn' && at < 3)
}

/** The ends of a row's words without clauses that close it or say nothing, the whole row first. */
export function ends(given: GivenWords): readonly End[] {
  const { all } = given
  const found: End[] = [{ at: all.length, to: all.length }]
  let end = all.length
  let silent = true
  let to = all.length
  while (found.length <= mostClauses) {
    end = stripped(all, end)
    const from = clauseStart(given, end)
    if (from <= 0) return found
    const says = !isSilent(given, from, end)
    if (says && !isClosing(given, from, end)) return found
    if (says) silent = false
    end = stripped(all, from)
    // Clauses that say nothing go with the count, but not those that stand after one that says something.
    if (says) to = end
    found.push({ at: end, to: silent ? all.length : to })
  }
  return found
}

/** The end of words without the separators before it. */
function stripped(words: readonly Word[], end: number): number {
  let at = end
  while (at > 0 && (trailing.test(textOf(words, at - 1)) || separators.test(textOf(words, at - 1)))) at -= 1
  return at
}
