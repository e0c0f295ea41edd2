import { beginsWithWork, isProse } from '../prose.ts'
import type { Word } from '../words.ts'
import type { Passage } from '../written.ts'
import { soundsLikeFoundation } from './foundation.ts'
import { sizesWithin } from './parts.ts'
import type { Chunk } from './passage-text.ts'
import type { Prepared, Wording } from './prepare.ts'
import { prepare } from './prepare.ts'
import { withoutName } from './read-parts.ts'

/** How much of a line is looked at for a label. */
const lookAhead = 400

const rows = '(?:rows?|rnds?|rounds?)'
const some = '(?:\\d+|two|three|four|five|six|eight|ten)'

const lead = '(?:(?:keeping|continuing|maintaining|working)\\b[^,.]{0,40},\\s*)?'

/** Sentences that stand for rows of their own: repetitions of earlier rows. */
const repeats = new RegExp(
  `^[\\s*_]*${lead}(?:then\\s+)?(?:rep|repeat)\\s+(?:the\\s+)?(?:from\\s+)?[\\[(]?(?:${rows}\\b|(?:last|previous|prev|these|this|above|preceding)\\s+(?:${some}\\s+)?(?:[\\[(][^)\\]]*[)\\]]\\s*)?${rows}\\b|(?:\\w+\\s)?\\d+(?:st|nd|rd|th)\\b[^.]{0,20}${rows}\\b|(?!all\\b|right\\b|quite\\b|entirely\\b)(?:\\p{L}[\\w-]*\\s+){1,2}${rows}\\b)`,
  'iu',
)

/** `for the second sleeve`: another piece, no rows of this one. */
const elsewhere =
  /\bfor (?:the |your )?(?:second|other|another|2nd|next|left|right|opposite|remaining|each|both|all|back|front)\b/i

/** Lines that do: shaping, and rows that change nothing. */
const goesOn = new RegExp(
  `^[\\s*_]*${lead}(?:(?:work|cont|continue|continuing|keep)\\s+(?:(?:to\\s+)?(?:increas|decreas|inc|dec)\\w*\\b[^.]*?\\b(?:in\\s+(?:this|the\\s+same)|as\\s+(?:established|set|before)|thus)|even|straight|plain|without|working|in\\s+(?:est\\w*\\s+)?(?:patt?|pattern|[shdt]\\w{1,3})\\b|${some}\\s+(?:\\S+\\s+){0,6}?(?:more\\s+)?${rows})\\b|${some}\\s+(?:more\\s+)?${rows}\\s+(?:of|in|even|straight|plain)\\b|(?:inc|dec)(?:rease|reasing)?\\s+(?:\\d+\\s+\\w+\\s+)?(?:at|each|on|every|both)\\b|next\\s+(?:\\d+\\s+)?${rows}\\b|(?:on|in)\\s+(?:the\\s+)?(?:every|each|next|alternate)\\b[^.,]{0,30}${rows}\\b)`,
  'i',
)

export function isRowOfItsOwn(line: string): boolean {
  return (repeats.test(line) || goesOn.test(line)) && !elsewhere.test(line.slice(0, 120))
}

function startsLabel(chunk: Chunk, wording: Wording): Prepared | null {
  const prepared = prepare({ ...chunk, text: chunk.text.slice(0, lookAhead) }, wording)
  return prepared.label === null ? null : prepared
}

/** `Sizes S and M only:` on a line of its own */
function isSizesAlone(chunk: Chunk, wording: Wording): boolean {
  if (chunk.text.length > 300) return false
  const { opens, alone } = prepare(chunk, wording)
  return opens !== null && alone
}

/** After this no row goes on. */
const yarnCut = /\b(?:fasten off|cut yarn|break off|break yarn|finish off)[^.\n]{0,40}\.?[\s*_)]*$/i
/** A count in brackets at the end. */
const count = /[([{<=]\s*\d[^()[\]{}<>]{0,40}[)\]}>]?[.\s*_]*$/
const sentenceEnd = /[.!?)\]}:]["'”’*_\s]*$/

const endsPiece = /^(?:fasten|finish|turn|do not|join|break|cut|fo\b|weave|stuff|sew|repeat|rep\b|end\b|with\b)/i

/** A line of few words, none of which is worked: `First Strap`, `**Shape top**` */
export function isTitle(text: string, { vocabulary }: Wording, words: () => Prepared): boolean {
  const line = text.replace(/[*_#:]+/g, ' ').trim()
  const count = line.split(/\s+/).length
  if (line.length > 50 || count > 6 || !/^\p{Lu}/u.test(line) || /[,;]$/.test(line)) return false
  if (endsPiece.test(line) || (count > 3 && line.endsWith('.'))) return false
  const own = words().own.flatMap((each) => each.words)
  return isProse(
    own.filter(({ text: word }) => !/^\*{1,3}$/.test(word)),
    vocabulary,
  )
}

/** `Button loop: ch 8, …` */
const named = /^[\s*_]*\p{Lu}[\p{L}\s-]{2,40}:/u

function ownWords({ own }: Prepared): readonly Word[] {
  return own.flatMap(({ words }) => words)
}

/** Whether a line without a label opens a chunk of its own after what stands above it. */
function opensAfter(above: Chunk, chunk: Chunk, wording: Wording): boolean {
  if (isRowOfItsOwn(chunk.text) || yarnCut.test(above.text)) return true
  if (!sentenceEnd.test(above.text)) return false
  const prepared = prepare(chunk, wording)
  if (named.test(chunk.text) && withoutName(ownWords(prepared), wording.vocabulary) !== null) return true
  if (prepared.opens === 'all' || isTitle(chunk.text, wording, () => prepared)) return true
  const words = ownWords(prepared)
  // Row below row, each with its count.
  if (count.test(above.text) && count.test(chunk.text) && beginsWithWork(words, wording.vocabulary)) return true
  // A note above the chain that a piece is begun with.
  return soundsLikeFoundation(words) && prepare(above, wording).label === null
}

function lines(passage: Passage): Chunk[] {
  let { start } = passage.at
  return (passage.asRead ?? passage.text).split('\n').map((text) => {
    const chunk = { passage, text, start }
    start += text.length + 1
    return chunk
  })
}

function joined(first: Chunk, second: Chunk): Chunk {
  return { ...first, text: `${first.text}\n${second.text}` }
}

/** Lines that belong together: each label begins a chunk, a line without one goes on with what stands above it. */
function byLabel(passage: Passage, wording: Wording): readonly Chunk[] {
  const chunks: Chunk[] = []
  for (const line of lines(passage)) {
    const last = chunks.at(-1)
    if (last === undefined || isSizesAlone(last, wording) || begins(last, line, wording)) chunks.push(line)
    else chunks[chunks.length - 1] = joined(last, line)
  }
  return chunks
}

function begins(last: Chunk, line: Chunk, wording: Wording): boolean {
  const prepared = prepare({ ...line, text: line.text.slice(0, lookAhead) }, wording)
  if (prepared.label !== null || (prepared.opens !== null && prepared.alone)) return true
  return prepared.opens === 'some' ? !goesWith(last, prepared, wording) : opensAfter(last, line, wording)
}

/** `Size S: ch 72.`, after a label too, and below it `Size M: ch 78.`; or below a label that stands alone: one row. */
function goesWith(last: Chunk, { only }: Prepared, wording: Wording): boolean {
  const above = prepare(last, wording)
  if (above.label !== null && above.own.every(({ words }) => words.length === 0)) return true
  const there = above.only ?? sizesAbove(last, above, wording)
  return there.length > 0 && only?.every((size) => !there.includes(size)) === true
}

function sizesAbove({ text }: Chunk, { label, opens }: Prepared, { names, vocabulary }: Wording): readonly number[] {
  return label !== null || opens === 'some' ? sizesWithin(text, names, vocabulary.sizes) : []
}

const sentenceStart = /(?<=[.!?)\]}:]["'”’*_]*)\s+(?=["'“‘*_([]*[\p{Lu}\d])/gu

/** Whether a label with a colon or dash begins in the middle of a paragraph: `Ch 6. 1st Round: 12 sc in ring.` */
function opensRow(chunk: Chunk, wording: Wording): boolean {
  if (!/^\S{0,20}\s*\S{0,12}\s*[^.;]{0,60}?[:—–-]/.test(chunk.text)) return false
  const label = startsLabel(chunk, wording)?.label ?? null
  if (label === null || !label.sure) return false
  const { at, name } = label
  return /^(?:row|rnd|rd|round|r|next \w+)$/i.test(name) && /[:–—-]$/.test(textOf(chunk, at))
}

function textOf({ start, text }: Chunk, at: { readonly start: number; readonly end: number }): string {
  return text.slice(at.start - start, at.end - start).trimEnd()
}

/** Cuts a chunk before each sentence that is a row of its own. */
function bySentence(chunk: Chunk, wording: Wording): readonly Chunk[] {
  for (const match of chunk.text.matchAll(sentenceStart)) {
    const cutAt = match.index + match[0].length
    const rest = { ...chunk, text: chunk.text.slice(cutAt), start: chunk.start + cutAt }
    if (!(opensRow(rest, wording) || repeats.test(rest.text)) || !hasWords(chunk, cutAt, wording)) continue
    return [{ ...chunk, text: chunk.text.slice(0, cutAt) }, ...bySentence(rest, wording)]
  }
  return [chunk]
}

/** Whether more than a label, a side or sizes stand before a place. */
function hasWords(chunk: Chunk, cutAt: number, wording: Wording): boolean {
  const { own, opens, alone } = prepare({ ...chunk, text: chunk.text.slice(0, cutAt) }, wording)
  if (opens !== null && alone) return false
  return own.some(({ words }) => words.some(({ kind, text }) => kind !== 'mark' && text !== 'rs' && text !== 'ws'))
}

/** Pieces of a passage, each of which holds one row or none. */
export function chunksOf(passage: Passage, wording: Wording): readonly Chunk[] {
  return byLabel(passage, wording).flatMap((chunk) => bySentence(chunk, wording))
}
