import type { Span } from '../../diagnostic/index.ts'

/** A special stitch as a draft defines it. */
export interface Definition {
  readonly name: string
  readonly also: readonly string[]
  readonly meaning: string
  readonly at: Span
  readonly meaningAt: Span
}

const definitionLine = /^[\s>*_+-]*((?:\d[ -])?[^:=\n–—]{1,60}?)[*_\s]*(?::|=|\s[–—-]\s|[–—](?=[*_\s]))[*_]*\s*(\S.*)$/s
const lead = /^(?:special st(?:itch)?(?:es)?(?: used)?|note|abbreviations?)\s*[:–-]\s*(?=\S)/i
const verb = /^(?:(?:to |how to )?(?:make|work) )?(?:a |an |the )?/i

/** `Puff Stitch` → `puff stitch`; `V-st` and `FPdc` stay. */
function asWritten(name: string): string {
  return name.replace(/(?<!\p{L})\p{Lu}\p{Ll}+(?![\p{L}])/gu, (word) => word.toLowerCase())
}

function namesOf(head: string): { readonly name: string; readonly also: readonly string[] } {
  const plain = head.replace(/[*_“”"]+/g, '').trim()
  const brackets = /^(.*?)\s*[([](.+?)[)\]]\s*$/.exec(plain)
  const [name = '', ...others] = (brackets?.[1] ?? plain).split(/\s+or\s+|\s*\/\s*|,\s*/).map((each) => each.trim())
  const also = (brackets?.[2] ?? '').split(/,|\bor\b|\//).map((each) => each.replace(/^abbreviated( as)?/i, '').trim())
  return { name: name.replace(verb, ''), also: [...others, ...also].filter((each) => each !== '') }
}

/**
 * A line that defines a stitch; null for any other.
 *
 *     **Shell (sh):** 5 dc in same st.     V-st = (dc, ch 1, dc) in one st
 *
 * @param start where the line stands in the draft
 */
export function definitionOf(line: string, start: number): Definition | null {
  const led = lead.exec(line)?.[0].length ?? 0
  const match = definitionLine.exec(line.slice(led))
  const head = match?.[1]
  const meaning = match?.[2]
  if (head === undefined || meaning === undefined) return null
  const { name, also } = namesOf(head)
  if (name === '') return null
  const meaningStart = start + line.lastIndexOf(meaning)
  const own = meaning.replace(/[*_\s]+$/, '')
  return {
    name: asWritten(name),
    also,
    meaning: own,
    at: { start: start + line.length - line.trimStart().length, end: start + line.trimEnd().length },
    meaningAt: { start: meaningStart, end: meaningStart + own.length },
  }
}
