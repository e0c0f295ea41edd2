import type { Span } from '../../diagnostic/index.ts'
import { readWords, type Word } from '../words.ts'
import { type Short, type Speech, type Spoken, speechFor } from './speech.ts'

/** A stretch of text that is said otherwise in the other country's terms, or that is an abbreviation. */
export interface TermFound {
  /** Offsets into the text. */
  readonly at: Span
  /** The same in the other country's terms; the text's own words where both say the same. */
  readonly other: string
  /** What it is read out as, of an abbreviation; of one of the pattern's own names, that name. Null for words in full. */
  readonly short: Short | { readonly own: string } | null
}

/** How a text is to be taken: as steps, or as prose that may speak of anything. */
export type Manner = 'steps' | 'prose'

/** The names that a pattern's text may use. */
export interface Naming {
  readonly terms: 'us' | 'uk'
  /** The pattern's own names of stitches, by spelling in lower case, with the one that they are listed under. They stay as they are. */
  readonly own: Readonly<Record<string, string>>
}

const mostWordsInName = 6

/**
 * The terms of a text, in its order.
 *
 *     Sk 2 sts, dc in next sc   →   Miss 2 sts, tr in next dc
 *     ^^   ^^^  ^^         ^^       `sts` is listed and stays
 */
export function termsIn(text: string, naming: Naming, manner: Manner): readonly TermFound[] {
  const words = readWords({ at: { start: 0, end: text.length }, text, holes: [] }, 1)
  const speech = speechFor(naming.terms)
  const found: TermFound[] = []
  for (let at = 0; at < words.length; ) {
    const term = ownName(words, at, text, naming) ?? known(words, at, text, speech, manner)
    if (term === null) at += 1
    else {
      found.push(term.found)
      at += term.words
    }
  }
  return found
}

/** The same text in the other country's terms. */
export function translated(text: string, naming: Naming, manner: Manner): string {
  let told = ''
  let from = 0
  for (const { at, other } of termsIn(text, naming, manner)) {
    told += text.slice(from, at.start) + other
    from = at.end
  }
  return told + text.slice(from)
}

interface Taken {
  readonly found: TermFound
  /** How many words it has. */
  readonly words: number
}

/** Text of the words from one on, parted by blanks; null where fewer of them can be part of a name. */
function nameText(words: readonly Word[], from: number, count: number): string | null {
  const all = words.slice(from, from + count)
  const fit = all.every(({ kind, text }) => kind === 'word' || kind === 'number' || (kind === 'mark' && text === '-'))
  return all.length === count && fit ? all.map(({ text }) => text).join(' ') : null
}

function longest<T>(words: readonly Word[], from: number, look: (name: string) => T | undefined): [T, number] | null {
  for (let count = mostWordsInName; count > 0; count -= 1) {
    const name = nameText(words, from, count)
    const found = name === null ? undefined : look(name)
    if (found !== undefined) return [found, count]
  }
  return null
}

function spanOf(words: readonly Word[], from: number, count: number): Span {
  return { start: words[from]?.at.start ?? 0, end: words[from + count - 1]?.at.end ?? 0 }
}

function ownName(words: readonly Word[], from: number, text: string, { own }: Naming): Taken | null {
  const found = longest(words, from, (name) => (Object.hasOwn(own, name) ? own[name] : undefined))
  if (found === null) return null
  const [name, count] = found
  const at = spanOf(words, from, count)
  return { found: { at, other: text.slice(at.start, at.end), short: { own: name } }, words: count }
}

function known(words: readonly Word[], from: number, text: string, speech: Speech, manner: Manner): Taken | null {
  const found = longest(words, from, (name) => speech.get(name) ?? together(name, speech))
  if (found === null) return null
  const [spoken, count] = found
  const at = spanOf(words, from, count)
  if (!isMeant(spoken, words, from, count, text.slice(at.start, at.end), manner)) return null
  return { found: { at, other: inCase(text.slice(at.start, at.end), spoken.other), short: spoken.short }, words: count }
}

/** `sc2tog`, `dc3tog` */
function together(name: string, speech: Speech): Spoken | undefined {
  const [, stitch = '', legs = '', plural = ''] = /^(\p{L}+)(\d+)tog(s?)$/u.exec(name) ?? []
  const spoken = speech.get(stitch)
  if (spoken?.short == null) return undefined
  const { full, otherFull } = spoken.short
  const short = {
    entry: `${stitch}${legs}tog`,
    full: `${full} ${legs} together`,
    otherFull: `${otherFull} ${legs} together`,
  }
  return { other: `${spoken.other}${legs}tog${plural}`, short, sure: 'published' }
}

/** What a word for a stitch is not followed by: `double strand`, `long tail`. */
const noStitch =
  /^(?:strand|thread|yarn|loop|lp|ring|circle|chain|ch|layer|side|sided|knot|tail|end|enough|as|the|up)s?$/
/** What is passed over in a row. */
const places =
  /^(?:sts?|stitch|stitches|chs?|chains?|sps?|spaces?|loops?|lps?|rows?|rnds?|rounds?|groups?|shells?|one|it|them)$/

function isMeant(
  spoken: Spoken,
  words: readonly Word[],
  from: number,
  count: number,
  written: string,
  manner: Manner,
): boolean {
  const after = words[from + count]
  if (spoken.sure === 'word') return manner === 'steps' && (after?.kind !== 'word' || !noStitch.test(after.text))
  if (manner === 'steps') return true
  // Capitals may be initials, unless a number says how many.
  if (/^\p{Lu}{2,3}$/u.test(written) && spoken.other !== written.toLowerCase())
    return words[from - 1]?.kind === 'number'
  if (spoken.sure === 'published' || spoken.other === written.toLowerCase()) return true
  return words.slice(from + count, from + count + 5).some(({ text }) => places.test(text))
}

/** As the writer's own word: with a capital at the beginning, or in capitals. */
function inCase(written: string, other: string): string {
  if (written.toLowerCase() === other.toLowerCase()) return written
  const letters = written.replace(/\P{L}/gu, '')
  if (letters.length > 1 && letters === letters.toUpperCase()) return other.toUpperCase()
  if (/^\p{Lu}\P{Lu}*$/u.test(written)) return `${other.charAt(0).toUpperCase()}${other.slice(1)}`
  return letters === letters.toLowerCase() ? other.toLowerCase() : other
}
