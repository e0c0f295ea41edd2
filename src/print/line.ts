import type { Face, Faces } from './face.ts'
import type { Style } from './style.ts'
import type { Stretch } from './word.ts'
import { setWord } from './word.ts'

/** Text of one look. A newline in it ends the line. */
export interface Run {
  readonly text: string
  readonly style: Style
}

/** What is drawn at once: one face, one style. `x` counts from the line's left end; points. */
export interface Fragment {
  readonly text: string
  readonly face: Face
  /** The fraction that begins here, as it is read and copied; '' where it goes on, null outside of one. */
  readonly reads: string | null
  readonly style: Style
  readonly size: number
  readonly rise: number
  readonly x: number
  readonly width: number
}

export interface Line {
  readonly fragments: readonly Fragment[]
  readonly width: number
}

/** Faces to set with, and where characters that none of them has are put down. */
export interface Setter {
  readonly faces: Faces
  readonly missing: Set<string>
}

interface Part extends Stretch {
  readonly style: Style
}

/** Letters between two places where a line may end, with the space that follows them. */
interface Word {
  readonly parts: readonly Part[]
  readonly text: string
  readonly width: number
  readonly space: number
  readonly ends: 'never' | 'here' | 'must'
}

/** Sets runs in lines no wider than `width` points; at least one line comes back. */
export function breakLines(setter: Setter, runs: readonly Run[], width: number): readonly Line[] {
  const read = readWords(setter, runs)
  const tooWide = read.some((word) => word.width > width)
  const words = tooWide ? read.flatMap((word) => (word.width > width ? cutWord(word, width) : [word])) : read
  const lines: Line[] = []
  let start = 0
  while (start < words.length) {
    const end = fill(words, start, width)
    lines.push(joinWords(words, start, end))
    start = end
  }
  return lines.length === 0 ? [{ fragments: [], width: 0 }] : lines
}

/** Width that runs take on one line, and the widest word in them; points. */
export function measureRuns(setter: Setter, runs: readonly Run[]): { readonly whole: number; readonly word: number } {
  let whole = 0
  let widest = 0
  let x = 0
  for (const { width, space, ends } of readWords(setter, runs)) {
    whole = Math.max(whole, x + width)
    widest = Math.max(widest, width)
    x = ends === 'must' ? 0 : x + width + space
  }
  return { whole, word: widest }
}

/** The words of runs. Those of one look are remembered: a text is measured, broken, and set again for another paper. */
function readWords(setter: Setter, runs: readonly Run[]): readonly Word[] {
  const [run, ...more] = joinRuns(runs)
  if (run === undefined) return []
  const { words, missing } =
    more.length === 0 ? rememberedText(setter.faces, run) : readText(setter.faces, [run, ...more])
  for (const character of missing) setter.missing.add(character)
  return words
}

/** Neighbours of one look as one: the words of a row stand in many pieces, its numbers among them. */
function joinRuns(runs: readonly Run[]): readonly Run[] {
  if (runs.length < 2) return runs
  const joined: { text: string; style: Style }[] = []
  for (const { text, style } of runs) {
    const last = joined.at(-1)
    if (last?.style === style) last.text += text
    else joined.push({ text, style })
  }
  return joined
}

interface ReadText {
  readonly words: readonly Word[]
  /** Characters that no face has. */
  readonly missing: readonly string[]
}

const texts = new WeakMap<Faces, WeakMap<Style, Map<string, ReadText>>>()

/** Enough for the texts of ten patterns; then memory is started afresh. */
const mostTexts = 1000

function rememberedText(faces: Faces, run: Run): ReadText {
  const known = textsOf(faces, run.style)
  const before = known.get(run.text)
  if (before !== undefined) return before
  if (known.size >= mostTexts) known.clear()
  const read = readText(faces, [run])
  known.set(run.text, read)
  return read
}

function textsOf(faces: Faces, style: Style): Map<string, ReadText> {
  const byStyle = texts.get(faces) ?? new WeakMap<Style, Map<string, ReadText>>()
  texts.set(faces, byStyle)
  const known = byStyle.get(style) ?? new Map<string, ReadText>()
  byStyle.set(style, known)
  return known
}

function readText(faces: Faces, runs: readonly Run[]): ReadText {
  const words: { parts: readonly Part[]; text: string; width: number; space: number; ends: Word['ends'] }[] = []
  const missing: string[] = []
  let parts: Part[] = []
  const close = (space: number, ends: Word['ends']): void => {
    words.push({ parts, text: textOf(parts), width: widthOf(parts), space, ends })
    parts = []
  }
  for (const { text, style } of runs) {
    for (const token of text.split(/( +|\n)/)) {
      if (token === '\n') close(0, 'must')
      else if (token.startsWith(' ')) {
        if (parts.length > 0) close(spaceOf(faces, style), 'here')
      } else if (token !== '') parts.push(...setParts(faces, token, style, missing))
    }
  }
  if (parts.length > 0) close(0, 'here')
  for (const [index, word] of words.entries()) if (staysWith(word, words[index + 1])) word.ends = 'never'
  return { words, missing }
}

function setParts(faces: Faces, text: string, style: Style, missing: string[]): readonly Part[] {
  const word = setWord(faces, style.face, style.tabular, text)
  missing.push(...word.missing)
  return word.stretches.map((stretch) => ({ ...stretch, width: stretch.width * style.size, style }))
}

function spaceOf(faces: Faces, style: Style): number {
  return setWord(faces, style.face, style.tabular, ' ').width * style.size
}

const textOf = (parts: readonly Part[]): string => parts.map((part) => part.text).join('')
const widthOf = (parts: readonly Part[]): number => parts.reduce((sum, part) => sum + part.width, 0)

/** A count stays with its stitch (`2 dc`, `60 (72) sc`), and an instruction with its count (`ch 1`, `Rnd 4`). */
function staysWith(word: Word, next: Word | undefined): boolean {
  if (word.ends !== 'here' || next === undefined) return false
  if (/\d[)\]]?$/.test(word.text)) return /^[a-z]{1,3}\b/.test(next.text) && !/^(in|of|to|and|or|as)\b/.test(next.text)
  return /^[*([]?(ch|sk|Rows?|Rnds?)$/i.test(word.text) && /^\d/.test(next.text)
}

/** The word after the last one that fits on a line which begins with the word at `start`. */
function fill(words: readonly Word[], start: number, width: number): number {
  let used = 0
  for (let index = start; index < words.length; index++) {
    const word = words[index]
    if (word === undefined) break
    if (index > start && used + word.width > width + 0.01) return lastPossibleEnd(words, start, index)
    if (word.ends === 'must') return index + 1
    used += word.width + word.space
  }
  return words.length
}

function lastPossibleEnd(words: readonly Word[], start: number, over: number): number {
  for (let end = over; end > start; end--) if (words[end - 1]?.ends !== 'never') return end
  return over
}

/** Cuts a word that is wider than a line, such as an address, letter by letter. */
function cutWord(word: Word, width: number): readonly Word[] {
  const rows: Part[][] = [[]]
  let used = 0
  for (const part of word.parts.flatMap(letters)) {
    if (used > 0 && used + part.width > width) {
      rows.push([])
      used = 0
    }
    rows.at(-1)?.push(part)
    used += part.width
  }
  return rows.map((parts, index) => {
    const last = index === rows.length - 1
    const rest = last ? { space: word.space, ends: word.ends } : { space: 0, ends: 'here' as const }
    return { parts, text: textOf(parts), width: widthOf(parts), ...rest }
  })
}

function letters(part: Part): readonly Part[] {
  const scale = part.style.size * part.scale
  return [...part.text].map((text, index) => ({
    ...part,
    text,
    reads: part.reads === null || index === 0 ? part.reads : '',
    width: (part.face.font.layout(text).advanceWidth / part.face.font.unitsPerEm) * scale,
  }))
}

type Draft = { -readonly [K in keyof Fragment]: Fragment[K] }

/** Puts neighbours of one look together. Each line ends in a space, so that its last word stays apart when copied. */
function joinWords(words: readonly Word[], start: number, end: number): Line {
  const fragments: Draft[] = []
  let x = 0
  let width = 0
  let space = ''
  for (let index = start; index < end; index++) {
    const word = words[index]
    if (word === undefined) break
    for (const part of word.parts) {
      append(fragments, part, space, x)
      space = ''
      x += part.width
    }
    width = x
    if (word.space > 0 || word.ends === 'must') space = ' '
    x += word.space
  }
  const last = fragments.at(-1)
  if (last !== undefined) last.text += ' '
  return { fragments, width }
}

function append(fragments: Draft[], part: Part, space: string, x: number): void {
  const last = fragments.at(-1)
  const size = part.style.size * part.scale
  const same = last?.face === part.face && last.style === part.style && last.size === size
  if (last !== undefined) last.text += space
  if (last !== undefined && same && last.reads === null && part.reads === null) {
    last.text += part.text
    last.width = x + part.width - last.x
    return
  }
  const { text, face, style, reads } = part
  fragments.push({ text, face, style, reads, size, rise: part.rise * part.style.size, x, width: part.width })
}
