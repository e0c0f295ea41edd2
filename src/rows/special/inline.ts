import { readLabel } from '../label.ts'
import type { Special } from '../step.ts'
import { readWords } from '../words.ts'
import type { Passage, Section } from '../written.ts'
import type { Definition } from './definition.ts'
import { definitionOf } from './definition.ts'
import { enterSpecial, wordsOfName } from './known.ts'
import { meaningOf } from './meaning.ts'
import type { Defining } from './sections.ts'

/** Words that no definition's name has. */
const noName =
  /\b(?:rows?|rnds?|rounds?|foundation|next|gauge|sizes?|notes?|hook|yarn|materials?|finish(?:ing|ed)?|all|repeat|pattern|tip)\b/i
/** Nouns that stitches are named by. */
const nouns =
  /(?:^|[ -])(?:st|sts|stitch|shell|fan|cluster|cl|bobble|bo|puff|popcorn|pc|picot|block|mesh|space|tile|v|petal|knot|group|cable|sh|cross|crossed|dc|tr|sc|hdc|htr|scallop|leaf|loop)$/i
/** Words of a row, not of a stitch. */
const ofRow = /\b(?:around|across|join|turn|fasten|rep(?:eat)?(?! from \*[^;]*(?:times|more|once|twice)))\b/i

function isRowLabel(line: string): boolean {
  const at = { start: 0, end: line.length }
  const words = readWords({ at, text: line.slice(0, 80), holes: [] }, 1)
  return readLabel(words, ({ start, end }) => line.slice(start, end), 1) !== null
}

/** Whether a name stands in some other line of the draft. */
function isUsed(name: string, texts: readonly string[], besides: string): boolean {
  const word = new RegExp(`(?<![\\p{L}])${name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?:e?s)?(?![\\p{L}])`, 'iu')
  return texts.some((text) => word.test(text.replace(besides, '')))
}

/** A line of prose that defines a stitch: `Special stitch: V-st = (dc, ch 1, dc) in one st`. */
function inProse(
  line: string,
  start: number,
  texts: readonly string[],
  specials: ReadonlyMap<string, Special>,
): Definition | null {
  if (line.length > 400 || isRowLabel(line)) return null
  const definition = definitionOf(line, start)
  if (definition === null || ofRow.test(definition.meaning)) return null
  const names = [definition.name, ...definition.also]
  const sounds = names.some((name) => nouns.test(name)) || /=|^\s*special/i.test(line)
  if (!sounds || names.some((name) => noName.test(name) || name.split(' ').length > 4)) return null
  const known = specials.get(wordsOfName(definition.name))
  const used = [...names, ...(known?.also ?? [])]
  return used.some((name) => isUsed(name, texts, line)) ? definition : null
}

const knownNames =
  '((?:V|Y|X)-?st(?:itch)?|[a-z]+[ -]st(?:itch)?|shell|cluster|puff|bobble|popcorn|picot|fan|scallop|block|petal)'
const ofPlace = /^(?:next|same|first|last|each|every|this|that|one|any|the|center|centre|marked|top|of|in)\b/i
/** `shell (5 dc in same st)` at its first use. */
const atUse = new RegExp(`\\b${knownNames}(\\s*[([])([^()[\\]{}]{4,120})([)\\]])(?!\\s*(?:x|×|\\d|twice|times))`, 'gi')
/** `(dc, ch 1, dc) in next st (V-st made)`: what stands before the remark. */
const made = new RegExp(
  `(\\([^()]{4,80}\\)[^,;.*()]*|[^,;.*():]{4,60}?)(\\s*\\()(?:first )?${knownNames} (?:made|formed|completed?)(\\))`,
  'gi',
)

/** Definitions in brackets of a row, and where each bracket stands in the text. */
function inBrackets(
  passage: Passage,
): readonly { readonly definition: Definition; readonly bracket: readonly [number, number] }[] {
  const found: { definition: Definition; bracket: readonly [number, number] }[] = []
  const { text, at } = passage
  const add = (name: string, meaning: string, from: number, bracket: readonly [number, number]): void => {
    const start = at.start + from
    const meaningAt = { start, end: start + meaning.length }
    found.push({ definition: { name, also: [], meaning, at: meaningAt, meaningAt }, bracket })
  }
  for (const match of text.matchAll(atUse)) {
    const [whole, name = '', opens = '', meaning = ''] = match
    // `in next st (mark it)` names a place.
    if (ofPlace.test(name)) continue
    const from = match.index + name.length + opens.length
    add(name.toLowerCase(), meaning, from, [match.index + name.length, match.index + whole.length])
  }
  for (const match of text.matchAll(made)) {
    const [whole, meaning = '', , name = ''] = match
    add(name.toLowerCase(), meaning, match.index, [match.index + meaning.length, match.index + whole.length])
  }
  return found
}

function blank(text: string, from: number, to: number): string {
  return text.slice(0, from) + text.slice(from, to).replace(/[^\n]/g, ' ') + text.slice(to)
}

/** Reads a definition and enters it, unless its name has a meaning already. */
function enter(definition: Definition, passage: Passage, defining: Defining): boolean {
  const known = defining.specials.get(wordsOfName(definition.name))
  if (known !== undefined && known.at !== null) return false
  const { start, end } = definition.meaningAt
  const text = passage.text.slice(start - passage.at.start, end - passage.at.start)
  const meant = meaningOf(definition, text, passage.holes, defining.vocabulary)
  if (meant === null || meant === 'unread') return false
  enterSpecial(defining.specials, meant)
  return true
}

function withoutProse(passage: Passage, texts: readonly string[], defining: Defining): Passage {
  let { text } = passage
  let from = 0
  for (const line of passage.text.split('\n')) {
    const definition = inProse(line, passage.at.start + from, texts, defining.specials)
    if (definition !== null && enter(definition, passage, defining)) text = blank(text, from, from + line.length)
    from += line.length + 1
  }
  return text === passage.text ? passage : { ...passage, text }
}

function withoutBrackets(passage: Passage, defining: Defining): Passage {
  let { text } = passage
  for (const { definition, bracket } of inBrackets(passage)) {
    const [from, to] = bracket
    if (enter(definition, passage, defining) || isRemark(text.slice(from, to))) text = blank(text, from, to)
  }
  return text === passage.text ? passage : { ...passage, text }
}

function isRemark(bracket: string): boolean {
  return /\b(?:made|formed|completed?)\)$/.test(bracket)
}

/**
 * Reads the definitions that stand among rows and notes, in a line of their own or in a bracket at first use, and
 * blanks them, so that none is taken for a row. Nothing moves.
 */
export function readInline(sections: readonly Section[], defining: Defining): readonly Section[] {
  const texts = sections.flatMap(({ passages }) => passages.map(({ text }) => text))
  if (!texts.some((text) => /[:=–—]|made|formed|complete|\(/.test(text))) return sections
  return sections.map((section) => ({
    ...section,
    passages: section.passages.map((passage) => withoutBrackets(withoutProse(passage, texts, defining), defining)),
  }))
}
