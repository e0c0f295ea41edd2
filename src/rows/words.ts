import type { Span } from '../diagnostic/index.ts'
import type { PerSize } from '../measure/value.ts'
import type { Count } from './count.ts'
import { everySize } from './count.ts'
import { closedUp, spacedName, withoutDots } from './dots.ts'
import type { LoopCode } from './past.ts'
import type { Hole, MadeByRow } from './written.ts'

interface Common {
  readonly at: Span
  /** Lower case; for anything but words and marks, what stands there in the draft. */
  readonly text: string
  /** No blank before it, as in `dc2` or `ch-2`. */
  readonly glued: boolean
  /** The loop that words taken out beside it name; `loopOn`: for all that follows, too. */
  readonly loop?: LoopCode
  readonly loopOn?: boolean
}

/** A word, number or mark of a row, with its place in the draft. */
export type Word = Common &
  (
    | { readonly kind: 'word' }
    | { readonly kind: 'mark' }
    /** `typed`: written out by hand. `ordinal`: `2nd`. `bracketed`: a list that brought its own brackets. */
    | {
        readonly kind: 'number'
        readonly count: Count
        readonly typed: boolean
        readonly ordinal: boolean
        readonly bracketed: boolean
      }
    | { readonly kind: 'length'; readonly centimetres: Count }
    | { readonly kind: 'bySize'; readonly texts: PerSize<string | null> }
    | { readonly kind: 'made'; readonly of: (row: MadeByRow) => Count }
    | { readonly kind: 'broken' }
  )

export type NumberWord = Extract<Word, { readonly kind: 'number' }>

/** What words are cut from: a stretch of the draft and the placeholders in it. */
export interface Text {
  readonly at: Span
  readonly text: string
  readonly holes: readonly Hole[]
}

const numberWords = numbered(
  'two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty',
)
const tens: ReadonlyMap<string, number> = new Map(
  ['thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'].map((word, index) => [word, 10 * (index + 3)]),
)
const ordinalWords = numbered(
  'second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth',
)
/** An arrow leads from the label to the steps, or from these to the count. */
function arrows(signs: string): Readonly<Record<string, string>> {
  return Object.fromEntries([...signs].map((sign) => [sign, '=>']))
}

const plainForms: Readonly<Record<string, string>> = {
  '×': 'x',
  '&': 'and',
  '—': '–',
  '−': '-',
  '‐': '-',
  '‑': '-',
  '✖': 'x',
  '✕': 'x',
  '✳': '*',
  '✴': '*',
  '∗': '*',
  '⁎': '*',
  ...arrows('→➜➔⇒⟶➝➞➡⮕⇨'),
}

const lexeme = new RegExp(
  [
    // blank; a backslash at the end of a line breaks it; pictures and bullets say nothing
    '(\\s+|__+|\\\\(?=\\s|$)|(?:(?![→➡✖✕✳✴⮕])\\p{Extended_Pictographic}|[\\ufe0e\\ufe0f\\u200d•◦▪▫■□●○◆◇►▸▹◂☐☑]|[\\u{1f3fb}-\\u{1f3ff}])+)',
    '\\\\([^\\s\\w])', // escaped
    '(\\d*(?:1st|\\dnd|\\drd|\\dth|[23]d(?!\\.|\\s?(?:c|tr)\\b)))(?![a-z])', // ordinal, with an ending that slipped too
    '(\\d+(?:\\.\\d+)?)', // number
    `(${spacedName})`, // stitch name with full stops or blanks in it
    "(w\\/o?(?![\\p{L}\\d])|\\p{L}+\\d+tog|\\p{L}+(?:['’-]\\p{L}+)*)", // word
    '\\*\\*|=>|.', // mark
  ].join('|'),
  'iuy',
)

/** Words that stand for the numbers from 2 on. */
function numbered(words: string): ReadonlyMap<string, number> {
  return new Map(words.split(' ').map((word, index) => [word, index + 2]))
}

function numberWord(common: Common, value: number, ordinal: boolean, sizes: number): Word {
  return {
    ...common,
    kind: 'number',
    count: everySize(value, sizes),
    typed: true,
    ordinal,
    bracketed: false,
  }
}

const shortened: Readonly<Record<string, string>> = { 'w/': 'with', 'w/o': 'without' }

function fromLetters(common: Common, sizes: number): Word {
  const long = shortened[common.text]
  if (long !== undefined) return { ...common, text: long, kind: 'word' }
  const value = numberWords.get(common.text) ?? tens.get(common.text)
  if (value !== undefined) return numberWord(common, value, false, sizes)
  const ordinal = ordinalWords.get(common.text)
  if (ordinal !== undefined) return numberWord(common, ordinal, true, sizes)
  return { ...common, kind: 'word' }
}

function fromLexeme(match: RegExpExecArray, common: Common, sizes: number): Word {
  const [, , escaped, ordinal, number, spaced, word] = match
  if (ordinal !== undefined) return numberWord(common, Number.parseInt(common.text, 10), true, sizes)
  if (number !== undefined) return numberWord(common, Number(common.text), false, sizes)
  if (spaced !== undefined) return { ...common, text: closedUp(common.text), kind: 'word' }
  if (word !== undefined) return fromLetters(common, sizes)
  const mark = escaped ?? common.text
  const text = plainForms[mark] ?? mark
  return { ...common, text, kind: /^\p{L}/u.test(text) ? 'word' : 'mark' }
}

/** Words of placeholder-free text. An odd character is a mark; it never fails. */
function cut(written: string, start: number, gluedFirst: boolean, sizes: number): Word[] {
  const text = withoutDots(written)
  const words: Word[] = []
  lexeme.lastIndex = 0
  let glued = gluedFirst
  for (let match = lexeme.exec(text); match !== null; match = lexeme.exec(text)) {
    // The first group is a blank.
    if (match[1] !== undefined) {
      glued = false
      continue
    }
    const from = start + match.index
    const common = { at: { start: from, end: from + match[0].length }, text: match[0].toLowerCase(), glued }
    words.push(fromLexeme(match, common, sizes))
    glued = true
  }
  return words
}

function sameText(texts: PerSize<string | null>): string | null {
  const [first = null, ...rest] = texts
  return first !== null && rest.every((text) => text === first) ? first : null
}

function fromHole(hole: Hole, source: string, glued: boolean, sizes: number): readonly Word[] {
  const common = { at: hole.at, text: source, glued }
  const content = hole.content
  switch (content.kind) {
    case 'number':
      return [{ ...common, kind: 'number', count: content.bySize, typed: false, ordinal: false, bracketed: false }]
    case 'length':
      return [{ ...common, kind: 'length', centimetres: content.bySize }]
    case 'text': {
      const text = sameText(content.bySize)
      if (text === null) return [{ ...common, kind: 'bySize', texts: content.bySize }]
      return wordsOfText(text, hole.at, sizes)
    }
    case 'made':
      return [{ ...common, kind: 'made', of: content.of }]
    case 'broken':
      return [{ ...common, kind: 'broken' }]
  }
}

/** Words of a text that a placeholder stands for: all of them stand where the placeholder stands. */
export function wordsOfText(text: string, at: Span, sizes: number): readonly Word[] {
  return cut(text, 0, false, sizes).map((word) => ({ ...word, at }))
}

/**
 * Cuts a stretch of the draft into words. Backslash escapes give the bare mark, underscores of
 * emphasis are dropped; spans are offsets into the draft.
 */
export function readWords(text: Text, sizes: number): Word[] {
  const words: Word[] = []
  let at = text.at.start
  const piece = (to: number): string => text.text.slice(at - text.at.start, to - text.at.start)
  for (const hole of text.holes) {
    if (hole.at.start < at || hole.at.end > text.at.end) continue
    words.push(...cut(piece(hole.at.start), at, false, sizes))
    const source = text.text.slice(hole.at.start - text.at.start, hole.at.end - text.at.start)
    words.push(...fromHole(hole, source, false, sizes))
    at = hole.at.end
  }
  words.push(...cut(piece(text.at.end), at, false, sizes))
  return words
}
