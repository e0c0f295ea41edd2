import type { LoopCode } from './past.ts'
import type { Word } from './words.ts'

const openers = new Set([
  'blo',
  'flo',
  'bl',
  'fl',
  'tbl',
  'the',
  'back',
  'front',
  'both',
  'bk',
  'ft',
  'third',
  '3rd',
  'camel',
])
const prepositions = /^(?:in|into|through|working|work|using)$/
const followers = /^(?:each|next|same|first|last|every|the|sts?|rem|following|\d)$/
/** Loops that an earlier row has left free are places of their own, not a manner of working. */
const freed = /^(?:free|unused|unworked|remaining|rem|loose)$/
const earlier = /^(?:rnd|row|round|foundation|beg|beginning|starting|base|ch|chain)$/

/** Words of `back loop only` from `at` on: how many, 0 for none. */
function loopWords(words: readonly Word[], at: number): number {
  if (!openers.has(words[at]?.text ?? '') || freed.test(words[at - 1]?.text ?? '')) return 0
  const text = (ahead: number): string => words[at + ahead]?.text ?? ''
  if (/^(?:blo|flo|tbl)$/.test(text(0))) return 1
  if (/^(?:bl|fl)$/.test(text(0))) return prepositions.test(words[at - 1]?.text ?? '') ? 1 : 0
  const the = text(0) === 'the' ? 1 : 0
  if (!/^(?:back|front|both|bk|ft|third|3rd|camel)$/.test(text(the)) || !/^(?:loops?|lps?)$/.test(text(the + 1)))
    return 0
  const length = the + 2 + (text(the + 2) === 'only' ? 1 : 0)
  const of = text(length) === 'of' ? (text(length + 1) === 'the' ? 2 : 1) : 0
  return of > 0 && earlier.test(text(length + of)) ? 0 : length
}

function codeOf(words: readonly Word[], at: number, length: number): LoopCode {
  const text = words
    .slice(at, at + length)
    .map((word) => word.text)
    .join(' ')
  if (/^(?:blo|bl|tbl)|back|bk/.test(text)) return 2
  return /^(?:flo|fl)|front|ft/.test(text) ? 1 : 0
}

const separators = /^[,;.:()[\]*]$/

/** Takes out the loop words from `at` on, and leaves word of them with a neighbour. Returns where to go on. */
function takeOut(words: readonly Word[], at: number, length: number, out: Word[]): number {
  const loop = codeOf(words, at, length)
  const of = words[at + length]?.text === 'of'
  const keeps = of || followers.test(words[at + length]?.text ?? '')
  while (!keeps && prepositions.test(out.at(-1)?.text ?? '')) out.pop()
  const next = at + length + (of ? 1 : 0)
  const before = out.at(-1)
  const leads = before === undefined || separators.test(before.text)
  const after = words[next]
  if (leads && after !== undefined) {
    out.push({ ...after, loop, loopOn: true })
    return next + 1
  }
  if (before !== undefined) out[out.length - 1] = { ...before, loop }
  return next
}

const closed = /^(?:(.+)-|(sc|hdc|dc|tr|htr|dtr|esc|sl))(blo|flo)$/

/** `hdc-blo`, `dcflo`: the stitch and its loop, closed up */
function parted(word: Word): readonly Word[] {
  const match = word.kind === 'word' ? closed.exec(word.text) : null
  if (match === null) return [word]
  return [
    { ...word, text: match[1] ?? match[2] ?? '' },
    { ...word, text: match[3] ?? '', glued: true },
  ]
}

/**
 * Takes out which loop is worked: it changes the look, not the count. A word beside it keeps it in mind, for itself or,
 * where it leads a clause, for all that follows.
 *
 *     sc in back loop of next st   →   sc in next st
 *     sc in BLO across             →   sc across
 */
export function withoutLoops(written: readonly Word[]): readonly Word[] {
  const words = written.some((word) => closed.test(word.text)) ? written.flatMap(parted) : written
  if (!words.some((_, at) => loopWords(words, at) > 0)) return words
  const out: Word[] = []
  for (let at = 0; at < words.length; ) {
    const length = loopWords(words, at)
    const word = words[at]
    if (length > 0) at = takeOut(words, at, length, out)
    else if (word !== undefined) {
      out.push(word)
      at += 1
    }
  }
  return out
}
