import type { SizeNames } from './size-names.ts'
import { sizeAt } from './size-names.ts'

/** Words that say for which sizes something is: `Sizes M and L only:` */
export interface SizeClause {
  readonly start: number
  /** After its colon or bracket. */
  readonly end: number
  /** Null for all sizes; none where the words leave open which. */
  readonly only: readonly number[] | null
  /** It ends in a colon. */
  readonly colon: boolean
}

interface Scanner {
  readonly text: string
  readonly names: SizeNames
  readonly sizes: number
  at: number
}

const stickies = new Map<string, RegExp>()

/** A pattern as one that matches only where it is asked to; made once. */
function stickyOf({ source }: RegExp): RegExp {
  const known = stickies.get(source)
  if (known !== undefined) return known
  const sticky = new RegExp(source, 'iuy')
  stickies.set(source, sticky)
  return sticky
}

/** Takes what a sticky pattern matches at the scanner's place. */
function take(scanner: Scanner, pattern: RegExp): RegExpExecArray | null {
  const sticky = stickyOf(pattern)
  sticky.lastIndex = scanner.at
  const match = sticky.exec(scanner.text)
  if (match !== null) scanner.at += match[0].length
  return match
}

function from(first: number, sizes: number): readonly number[] {
  return Array.from({ length: Math.max(0, sizes - first) }, (_, index) => first + index)
}

const numberWords = ['', 'one', 'two', 'three', 'four', 'five', 'six']

function numberIn(text: string): number {
  const word = numberWords.indexOf(text.toLowerCase())
  return word > 0 ? word : Number.parseInt(text, 10)
}

/** `larger sizes`, `two largest sizes`, `smallest size`: by their place in the list. */
function byRank(scanner: Scanner): readonly number[] | null {
  const { sizes } = scanner
  const match = take(scanner, /(?:the\s+)?(?:(\d+|two|three|four|five)\s+)?(larg|small)(er|est)\s+(sizes?)/)
  if (match === null) return null
  const [, written, way, degree, noun] = match
  // Which are the larger ones is plain of two sizes only.
  const some = (degree === 'est' && noun?.toLowerCase() === 'size') || sizes === 2 ? 1 : null
  const count = written === undefined ? some : Math.min(sizes, numberIn(written))
  if (count === null) return []
  return way?.toLowerCase() === 'larg' ? from(sizes - count, sizes) : from(0, count)
}

/** `1st and 3rd sizes`: by their place in the list. */
function byOrdinal(scanner: Scanner): readonly number[] | null {
  const start = scanner.at
  const match = take(
    scanner,
    /(?:the\s+)?((?:(?:\d+(?:st|nd|rd|th)|first|second|third|fourth|fifth|last)(?:\s*(?:,|&|and)\s*)*)+)\s*sizes?\b/,
  )
  if (match === null) return null
  const found = (match[1] ?? '').split(/\s*(?:,|&|\band\b)\s*/i).filter((word) => word.trim() !== '')
  const named = ['first', 'second', 'third', 'fourth', 'fifth']
  const places = found.map((written) => {
    const word = written.trim().toLowerCase()
    if (word === 'last') return scanner.sizes - 1
    const place = named.indexOf(word)
    return place >= 0 ? place : Number.parseInt(word, 10) - 1
  })
  if (places.length > 0 && places.every((place) => place >= 0 && place < scanner.sizes)) return [...new Set(places)]
  scanner.at = start
  return null
}

const between = /(?:[\s,&/()[\]+*_]|\band\b|\bor\b|\bsizes?\b|(?<=[(,[]\s*)[-–](?=\s*[,)\]]))*/

/** `M, L`, `M (L)`, `M–XL`, `M and up`: null where no size is named. */
function byName(scanner: Scanner): readonly number[] | null {
  const found = new Set<number>()
  // A dash holds the place of a size that it is not for.
  take(scanner, /(?:[-–]\s*[,(]\s*)+/)
  let end = scanner.at
  for (;;) {
    const own = sizeAt(scanner.text, scanner.at, scanner.names)
    if (own === null) break
    scanner.at = own.end
    found.add(own.size)
    end = rangeAfter(scanner, own.size, found)
    scanner.at = end
    take(scanner, between)
  }
  scanner.at = end
  return found.size === 0 ? null : [...found].sort((a, b) => a - b)
}

/** `–XL`, ` to XL`, ` and larger` after a size; gives the place after it. */
function rangeAfter(scanner: Scanner, size: number, found: Set<number>): number {
  const end = scanner.at
  const up = take(
    scanner,
    /\s*(?:and|&|or)\s+(?:(up|upwards?|larger|above|over|bigger)|(?:down|smaller|under|below))\b(?:\s+sizes?\b)?/,
  )
  if (up !== null) {
    const range = up[1] === undefined ? from(0, size + 1) : from(size, scanner.sizes)
    for (const each of range) found.add(each)
    return scanner.at
  }
  if (take(scanner, /\s*(?:[-–]|to|through|thru)\s*/) !== null) {
    const last = sizeAt(scanner.text, scanner.at, scanner.names)
    if (last !== null && last.size > size) {
      for (let each = size; each <= last.size; each += 1) found.add(each)
      return last.end
    }
  }
  scanner.at = end
  return end
}

/** `All sizes`, `all sizes except S`, `remaining sizes` */
function all(scanner: Scanner, others: readonly number[] | null): { readonly only: readonly number[] | null } | null {
  const rest = take(scanner, /(?:for\s+)?(?:all\s+(?:the\s+)?)?(?:other|remaining)\s+sizes\b/)
  if (rest !== null) {
    return others === null ? null : { only: from(0, scanner.sizes).filter((size) => !others.includes(size)) }
  }
  if (take(scanner, /(?:for\s+)?(?:all|both)\s+(?:the\s+)?sizes\b/) === null) return null
  if (take(scanner, /\s*,?\s*\(?(?:except|but|excluding)(?:\s+for)?(?:\s+sizes?)?\s+/) === null) return { only: null }
  const left = byName(scanner)
  return left === null ? null : { only: from(0, scanner.sizes).filter((size) => !left.includes(size)) }
}

interface Named {
  readonly only: readonly number[] | null
  /** The words `size` or `only` stand with the names. */
  readonly said: boolean
  readonly lead: boolean
}

function named(scanner: Scanner, others: readonly number[] | null): Named | null {
  const whole = all(scanner, others)
  if (whole !== null) {
    take(scanner, /\s+only\b/)
    return { only: whole.only, said: true, lead: false }
  }
  const lead = take(scanner, /(?:for|in)\s+/) !== null
  take(scanner, /the\s+/)
  const before = take(scanner, /sizes?\b\s*[:–-]?\s*\(?/) !== null
  const ranked = before ? null : (byRank(scanner) ?? byOrdinal(scanner))
  const first = scanner.at
  const only = ranked ?? byName(scanner)
  if (only === null) return null
  const numbers = /^[\d\s,()&-]*$/.test(scanner.text.slice(first, scanner.at))
  const after = take(scanner, /\s*[)\]]?\s*sizes?\b/) !== null
  const alone = take(scanner, /\s*[)\]]?\s*only\b/) !== null
  // `Rows 3 (5, 7)`: numbers name sizes only where that is said.
  if (ranked === null && numbers && !(before || after)) return null
  return { only, said: ranked !== null || before || after || alone, lead }
}

/**
 * A clause that begins at a place of a text, marks of emphasis and an opening bracket passed over; null where there is
 * none. Names alone need a colon or brackets around them.
 *
 * @param others sizes that have been named before, for `other sizes`
 */
export function sizeClauseAt(
  text: string,
  start: number,
  names: SizeNames,
  sizes: number,
  others: readonly number[] | null = null,
): SizeClause | null {
  const scanner: Scanner = { text, names, sizes, at: start }
  take(scanner, /[\s*_>•–-]*/)
  const open = take(scanner, /[([]/) !== null
  take(scanner, /\s*/)
  const found = named(scanner, others)
  if (found === null) return null
  const closed = take(scanner, /\s*[)\]]/) !== null
  const ends = scanner.at
  const mark = take(scanner, /[\s*_]*([:,–-]|\.(?=\s|$))?[*_]*/)?.[1] ?? ''
  const colon = mark === ':'
  const atEnd = scanner.at >= text.length || /^[\s*_]*\n/.test(text.slice(ends))
  const enough = colon || closed || atEnd || (found.said && (mark !== '' || /\bonly\b/i.test(text.slice(start, ends))))
  if (!enough || (open && !closed) || (!found.said && !(found.lead || colon || (open && closed)))) return null
  return { start, end: scanner.at, only: found.only, colon }
}
