import type { Content } from '../content.ts'
import type { Label } from '../label.ts'
import { beginsWithWork, isProse } from '../prose.ts'
import type { Read } from '../row-reading.ts'
import { isFoundation, isRow } from '../row-reading.ts'
import type { Step } from '../step.ts'
import { isRowOfItsOwn } from './chunks.ts'
import { speaksOfChain } from './foundation.ts'
import type { Chunk } from './passage-text.ts'
import { prepare } from './prepare.ts'
import { readPrepared } from './read-parts.ts'
import type { Cutter } from './row.ts'
import type { Found, SectionState } from './state.ts'
import { wordsOf } from './state.ts'

/** Whether the next number of a list stands before the steps of a row. */
function goesOnAsRows(cutter: Cutter, label: Label, further: readonly Chunk[]): boolean {
  const [next] = further
  if (next === undefined || label.numbers.kind !== 'list') return false
  const prepared = prepare(next, cutter)
  const numbers = prepared.label?.name === '' ? prepared.label.numbers : null
  if (numbers?.kind !== 'list' || numbers.items[0]?.[0] !== (label.numbers.items.at(-1)?.[0] ?? 0) + 1) return false
  return isRow(readPrepared(prepared, cutter.vocabulary, cutter.stitch).content)
}

/** Whether a chunk with a label is a row: by its label, by what it says, or because something in it may be worked. */
export function isLabelledRow(cutter: Cutter, state: SectionState, { prepared, further }: Found, read: Read): boolean {
  const { label } = prepared
  if (label === null) return false
  if (label.sure || isRow(read.content)) return true
  if (label.name === '' && goesOnAsRows(cutter, label, further)) return true
  return (label.name !== '' || state.rows > 0) && !isProse(wordsOf(prepared), cutter.vocabulary)
}

export function isUnlabelledRow(cutter: Cutter, state: SectionState, { chunk, prepared }: Found, read: Read): boolean {
  if (prepared.label !== null || speaksOfChain(wordsOf(prepared))) return false
  if (isRow(read.content)) return state.rows > 0 || isFoundation(read.content) || goesOnWith(cutter, read)
  if (read.content !== null || state.rows === 0) return false
  // `*Black*`: a line in italics is a heading of the designer's own.
  if (emphasised.test(chunk.text.trim())) return false
  // An instruction among rows is not passed over in silence.
  const words = wordsOf(prepared)
  const begins = beginsWithWork(words, cutter.vocabulary) || joins.test(words[0]?.text ?? '')
  const instructs = isRowOfItsOwn(chunk.text) || read.stated !== null || begins
  return instructs && !isProse(words, cutter.vocabulary)
}

/** `Skip next 10 unworked sts, join yarn in next st, …  15 sc` as the first words of a part: on what was left. */
function goesOnWith(cutter: Cutter, { content, stated }: Read): boolean {
  if (cutter.rows.length === 0 || stated === null || content?.kind !== 'steps') return false
  return content.steps.some((step) => step.kind === 'source' || (step.kind === 'slip' && step.yarn === true))
}

const emphasised = /^(\*{1,3}|_{1,3})[^*_]{1,120}\1:?$/
const joins = /^(?:re-?join|re-?attach|join|attach|rejoining|return)$/

const moves = new Set<Step['kind']>(['remark', 'turn', 'join', 'slip', 'skip', 'source', 'leave'])

/** Whether steps only lead to where a row begins: `Skip next 8 sts, rejoin yarn in next st.` */
export function leadsOn(content: Content | null): boolean {
  if (content?.kind !== 'steps' || !content.steps.every((step) => moves.has(step.kind))) return false
  return content.steps.some((step) => step.kind === 'skip' || step.kind === 'source' || step.kind === 'slip')
}
