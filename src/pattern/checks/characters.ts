import type { Diagnostic, Span } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import { bodyNodes, type Draft, spanOf } from '../draft.ts'

/** Whether the print-out's typefaces have a character. */
export type Prints = (character: string) => boolean

/** Characters that would come out as question marks in print; what stands together is one finding, at its first place. */
export function* characterFindings(draft: Draft, prints: Prints | null): Generator<Diagnostic> {
  if (prints === null) return
  const met = new Set<string>()
  for (const { start, end } of printedSpans(draft)) {
    for (const { text, index } of unprinted(draft.source.text.slice(start, end), prints)) {
      if (met.has(text)) continue
      met.add(text)
      const at = { start: start + index, end: start + index + text.length }
      yield diagnose('character-unprinted', at, { text, count: [...text].length })
    }
  }
}

function* unprinted(words: string, prints: Prints): Generator<{ readonly text: string; readonly index: number }> {
  for (const { 0: run, index } of words.matchAll(/\P{ASCII}+/gu)) {
    let text = ''
    let place = index
    for (const character of [...run, '']) {
      if (character !== '' && !prints(character)) text += character
      else {
        if (text !== '') yield { text, index: place - text.length }
        text = ''
      }
      place += character.length
    }
  }
}

/** The draft without what is never printed: comments among the facts, grading blocks. */
function* printedSpans(draft: Draft): Generator<Span> {
  for (const line of draft.source.text.slice(0, draft.bodyStart).matchAll(/.+/g)) {
    yield { start: line.index, end: line.index + line[0].replace(/(^|\s)#.*$/, '').length }
  }
  for (const node of bodyNodes(draft)) {
    if (node.type !== 'code' || node.lang !== 'grading') yield spanOf(draft, node)
  }
}
