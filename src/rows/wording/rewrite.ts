import type { Span } from '../../diagnostic/index.ts'
import { cover } from '../../diagnostic/index.ts'
import type { Word } from '../words.ts'

/**
 * A turn of phrase and the words that say the same in today's.
 *
 * `from` is matched against the words ahead as one text, parted by blanks: `#` is a number, `#th` an
 * ordinal. `to` is words parted by blanks; `$name` is what the group of that name matched.
 */
export interface Rewording {
  /** First words that it can begin with, parted by blanks. */
  readonly opens: string
  readonly from: RegExp
  readonly to: string
  /** What the words before must end with; the empty text at the beginning. */
  readonly after?: RegExp
}

export type Rewordings = ReadonlyMap<string, readonly Rewording[]>

/** Words ahead that a turn of phrase may look at. */
const longest = 26
/** Words before that it may look at. */
const before = 3

/** The pattern up to the end of a word, telling where each group stands. */
function wholeWords(pattern: RegExp): RegExp {
  return new RegExp(`(?:${pattern.source})(?:(?<= )|(?= |$))`, 'dy')
}

export function byFirstWord(rewordings: readonly Rewording[]): Rewordings {
  const found = new Map<string, Rewording[]>()
  for (const each of rewordings) {
    const indexed = { ...each, from: wholeWords(each.from) }
    for (const opener of each.opens.split(' ')) found.set(opener, [...(found.get(opener) ?? []), indexed])
  }
  return found
}

function shown(word: Word): string {
  if (word.kind === 'number') return word.ordinal ? '#th' : '#'
  return word.kind === 'word' || word.kind === 'mark' ? word.text : '~'
}

/** Words as one text, and where in it each of them begins and ends. */
interface Window {
  readonly text: string
  readonly starts: readonly number[]
  readonly ends: readonly number[]
}

/** Where each of the words shown stands in their text: asked for only where a turn of phrase has been found. */
function windowOf(text: string, all: readonly string[]): Window {
  const starts: number[] = []
  const ends: number[] = []
  let at = 0
  for (const each of all) {
    starts.push(at)
    ends.push(at + each.length)
    at += each.length + 1
  }
  return { text, starts, ends }
}

/** The words of a group; none where it matched nothing. */
function groupWords(words: readonly Word[], window: Window, group: [number, number] | undefined): readonly Word[] {
  if (group === undefined || group[0] === group[1]) return []
  return words.filter((_, at) => (window.starts[at] ?? 0) >= group[0] && (window.ends[at] ?? 0) <= group[1])
}

function newWord(text: string, at: Span): Word {
  return { kind: /^\p{L}/u.test(text) ? 'word' : 'mark', text, at, glued: false }
}

interface Rewritten {
  readonly taken: number
  readonly words: readonly Word[]
}

function rewriteAt(words: readonly Word[], window: Window, match: RegExpExecArray, to: string): Rewritten | null {
  const taken = window.ends.indexOf(match[0].trimEnd().length) + 1
  const [first] = words
  const last = words[taken - 1]
  if (first === undefined || last === undefined) return null
  const at = cover(first.at, last.at)
  const groups = match.indices?.groups ?? {}
  const tokens = to === '' ? [] : to.split(' ')
  return {
    taken,
    words: tokens.flatMap((token) =>
      token.startsWith('$') ? groupWords(words, window, groups[token.slice(1)]) : [newWord(token, at)],
    ),
  }
}

/** Words as they are shown to the patterns: as one text, of which a window is looked at. */
interface Line {
  readonly shown: readonly string[]
  readonly text: string
  /** Where each word begins in the text. */
  readonly starts: readonly number[]
}

function lineOf(shownWords: readonly string[]): Line {
  const starts: number[] = []
  let at = 0
  for (const each of shownWords) {
    starts.push(at)
    at += each.length + 1
  }
  return { shown: shownWords, text: shownWords.join(' '), starts }
}

function textAhead({ text, starts }: Line, at: number): string {
  const end = starts[at + longest]
  return text.slice(starts[at], end === undefined ? undefined : end - 1)
}

function firstThatFits(
  words: readonly Word[],
  at: number,
  line: Line,
  said: readonly Word[],
  all: readonly Rewording[],
): Rewritten | null {
  const text = textAhead(line, at)
  const lead = said.slice(-before).map(shown).join(' ')
  for (const { after, from, to } of all) {
    if (after !== undefined && !after.test(lead)) continue
    // Sticky: it is looked for at the beginning only.
    from.lastIndex = 0
    const match = from.exec(text)
    if (match === null) continue
    const ahead = words.slice(at, at + longest)
    const found = rewriteAt(ahead, windowOf(text, line.shown.slice(at, at + longest)), match, to)
    if (found !== null) return found
  }
  return null
}

/** Puts today's words in place of older turns of phrase. Every word keeps its place in the draft. */
export function rewrite(words: readonly Word[], rewordings: Rewordings): readonly Word[] {
  const shownWords = words.map(shown)
  if (!shownWords.some((each) => rewordings.has(each))) return words
  const line = lineOf(shownWords)
  const out: Word[] = []
  let changed = false
  for (let at = 0; at < words.length; ) {
    const word = words[at]
    if (word === undefined) break
    const all = rewordings.get(shownWords[at] ?? '')
    const found = all === undefined ? null : firstThatFits(words, at, line, out, all)
    changed ||= found !== null
    if (found === null) out.push(word)
    else out.push(...found.words)
    at += found?.taken ?? 1
  }
  return changed ? out : words
}
