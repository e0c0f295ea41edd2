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
  return new RegExp(`(?:${pattern.source})(?:(?<= )|(?= |$))`, 'd')
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

function windowOf(words: readonly Word[]): Window {
  let text = ''
  const starts: number[] = []
  const ends: number[] = []
  for (const word of words) {
    if (text !== '') text += ' '
    starts.push(text.length)
    text += shown(word)
    ends.push(text.length)
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

function rewriteAt(words: readonly Word[], window: Window, { from, to }: Rewording): Rewritten | null {
  const match = from.exec(window.text)
  if (match === null || match.index > 0) return null
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

function firstThatFits(ahead: readonly Word[], said: readonly Word[], all: readonly Rewording[]): Rewritten | null {
  const window = windowOf(ahead)
  const lead = said.slice(-before).map(shown).join(' ')
  for (const each of all) {
    if (each.after !== undefined && !each.after.test(lead)) continue
    const found = rewriteAt(ahead, window, each)
    if (found !== null) return found
  }
  return null
}

/** Puts today's words in place of older turns of phrase. Every word keeps its place in the draft. */
export function rewrite(words: readonly Word[], rewordings: Rewordings): readonly Word[] {
  if (!words.some((word) => rewordings.has(shown(word)))) return words
  const out: Word[] = []
  for (let at = 0; at < words.length; ) {
    const word = words[at]
    if (word === undefined) break
    const all = rewordings.get(shown(word))
    const found = all === undefined ? null : firstThatFits(words.slice(at, at + longest), out, all)
    out.push(...(found?.words ?? [word]))
    at += found?.taken ?? 1
  }
  return out
}
