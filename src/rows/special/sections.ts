import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Vocabulary } from '../reader.ts'
import type { Special } from '../step.ts'
import type { Passage, Section } from '../written.ts'
import type { Definition } from './definition.ts'
import { definitionOf } from './definition.ts'
import { enterSpecial, spellings, wordsOfName } from './known.ts'
import { commonMeaning, isCommon, meaningOf } from './meaning.ts'

/** Headings under which stitches are defined or abbreviations are listed. */
export function definesStitches(title: string | null): boolean {
  return (
    title !== null &&
    /special (?:st|abbr|tech)|stitch(?:es)? (?:guide|glossary|key|instructions|explained)|(?:stitches|techniques) used|pattern stitch|abbreviation|glossary/i.test(
      title,
    )
  )
}

/** Names of a draft and what was found while they were read. */
export interface Defining {
  readonly vocabulary: Vocabulary
  readonly specials: Map<string, Special>
  /** Those whose definition could not be read, with the name that is told. */
  readonly unread: Map<string, string>
  readonly found: Diagnostic[]
}

/** A line of another kind under such a heading: `sc – single crochet`, `st(s): stitch(es)`. */
function isPlainAbbreviation(definition: Definition, title: string | null): boolean {
  if (title === null || !/abbreviation|glossary/i.test(title)) return false
  return (
    /^[\p{L} -]*(?:\([\p{L}]+\))?$/u.test(definition.meaning.replace(/[.;,]/g, '')) && !/\d/.test(definition.meaning)
  )
}

interface Line {
  readonly text: string
  readonly start: number
}

/** Lines of a passage that each define something; a line that does not goes on with the one before it. */
function linesOf(passage: Passage): readonly Line[] {
  const found: { text: string; start: number }[] = []
  let start = passage.at.start
  for (const text of passage.text.split('\n')) {
    const last = found.at(-1)
    if (last === undefined || opensDefinition(text)) found.push({ text, start })
    else last.text += `\n${text}`
    start += text.length + 1
  }
  return found
}

/** `**Shell**`, `Puff (puff st):`, `sh = …`: a short head and its sign. */
function opensDefinition(line: string): boolean {
  return /^\s*(?:\*\*|__)/.test(line) || /^\s*[-+*]?\s*[^,;:=(]{1,30}(?:\([^)]{1,20}\))?\s*(?::|=|\s[–—-]\s)/.test(line)
}

/**
 * A definition that could not be read. A name that the trade knows keeps its common meaning; of one that closes as one
 * stitch nothing more need be known.
 */
function enterUnread(definition: Definition, { specials, unread, found }: Defining): void {
  const { name, also, at, meaning } = definition
  const known = [name, ...also].map((each) => specials.get(wordsOfName(each))).find((each) => each?.at === null)
  if (known !== undefined) enterSpecial(specials, { ...known, name, also, at, meaning })
  else for (const spelling of spellings({ name, also })) unread.set(spelling, name)
  if (known?.makes === 'one stitch') return
  found.push(diagnose('special-unread', at, { name, meaning: known?.meaning ?? null }))
}

function textOf(passage: Passage, { meaningAt }: Definition): string {
  return passage.text.slice(meaningAt.start - passage.at.start, meaningAt.end - passage.at.start)
}

/** `sh – shell`: another name for a stitch that is known by one. */
function enterAlias({ name, also, meaning }: Definition, { specials }: Defining): boolean {
  const known = specials.get(wordsOfName(meaning.replace(/[.;,]+$/, '')))
  if (known === undefined) return false
  for (const spelling of spellings({ name, also }))
    if (specials.get(spelling)?.at == null) specials.set(spelling, known)
  return true
}

/** `X: single crochet`, `V = increase`: a draft's own letters for what every row knows. */
function enterOwnName(definition: Definition, { vocabulary, specials }: Defining): boolean {
  const { name, also, meaning, at } = definition
  const makes = commonMeaning(meaning, vocabulary, at)
  const known = makes === null || [name, ...also].some((each) => isCommon(each, vocabulary.dictionary))
  if (!known && makes !== null) enterSpecial(specials, { name, also, makes, at, meaning })
  return !known
}

function define(definition: Definition, passage: Passage, title: string | null, defining: Defining): void {
  if (enterAlias(definition, defining) || enterOwnName(definition, defining)) return
  if (isPlainAbbreviation(definition, title)) return
  const { vocabulary, specials } = defining
  const meant = meaningOf(definition, textOf(passage, definition), passage.holes, vocabulary)
  if (meant === 'unread' && !/abbreviation|glossary/i.test(title ?? '')) enterUnread(definition, defining)
  else if (meant !== null && meant !== 'unread') enterSpecial(specials, meant)
}

/** `| Shell (sh) | 5 dc in same st |`: a name in a cell, and its meaning in the next. */
function ofCells(name: Passage, meaning: Passage): Definition | null {
  const own = name.text.replace(/\s+/g, ' ').trim()
  const text = meaning.text.trim()
  if (own === '' || own.length > 40 || text.length < 4) return null
  const line = definitionOf(`${own}: ${text}`, 0)
  const start = meaning.at.start + meaning.text.indexOf(text)
  const at = { start: name.at.start, end: meaning.at.end }
  return line === null ? null : { ...line, meaning: text, at, meaningAt: { start, end: start + text.length } }
}

function readCells(cells: readonly Passage[], defining: Defining): void {
  for (const [index, meaning] of cells.entries()) {
    const name = cells[index - 1]
    const definition = name === undefined ? null : ofCells(name, meaning)
    if (definition === null || isPlainAbbreviation(definition, 'abbreviation')) continue
    const meant = meaningOf(definition, textOf(meaning, definition), meaning.holes, defining.vocabulary)
    if (meant !== null && meant !== 'unread') enterSpecial(defining.specials, meant)
  }
}

/**
 * Reads the definitions of a section and enters them, so that later ones can use earlier ones.
 *
 *     - **Shell (sh):** 5 dc in same st.
 */
export function readDefinitions({ title, passages }: Section, defining: Defining): void {
  const cells = passages.filter(({ form }) => form === 'cell')
  readCells(cells, defining)
  for (const passage of passages) {
    if (passage.form === 'cell') continue
    for (const { text, start } of linesOf(passage)) {
      const definition = definitionOf(text, start)
      if (definition !== null) define(definition, passage, title, defining)
    }
  }
}
