import { toString as plainText } from 'mdast-util-to-string'
import type { Span } from '../../diagnostic/index.ts'
import { bodyNodes, type Draft, spanOf, textAt } from '../draft.ts'

/** A line of the draft's own list of abbreviations. */
export interface Listed {
  /** As the draft writes it: `sl st (ss)`. */
  readonly written: string
  readonly meaning: string
  readonly at: Span
}

const heading = /\babbreviations?\b|^(?:stitches|terms)(?: used)?$|^stitch (?:key|guide)$/i

/** Stretches of the body below headings that name a list of abbreviations. */
export function abbreviationSections(draft: Draft): readonly Span[] {
  const sections: Span[] = []
  let depth: number | null = null
  for (const node of bodyNodes(draft)) {
    if (node.type === 'heading') {
      const opens = heading.test(plainText(node))
      if (opens) sections.push({ start: spanOf(draft, node).end, end: spanOf(draft, node).end })
      depth = opens ? node.depth : depth !== null && node.depth > depth ? depth : null
    }
    const last = sections.at(-1)
    if (depth !== null && last !== undefined)
      sections[sections.length - 1] = { start: last.start, end: spanOf(draft, node).end }
  }
  return sections
}

/** `- **sc** – single crochet`, `sc = single crochet`, `| sc | single crochet |` */
const entry =
  /^(?<lead>[ \t]*(?:[-*+•|][ \t]+|\|)?[ \t]*)(?<name>[\p{L}\d][\p{L}\d\s().,/-]{0,24}?)[*_]*[ \t]*(?:[:=–—|]|[ \t]-[ \t])[*_]*[ \t]*(?<meaning>\p{L}[^|\n]{1,80})/u

function entryIn(line: string, start: number): Listed | null {
  const plain = line.replace(/[*_]/g, ' ')
  const { lead = '', name, meaning } = entry.exec(plain)?.groups ?? {}
  if (name === undefined || meaning === undefined) return null
  const written = name.trim()
  const from = start + plain.indexOf(name, lead.length)
  return { written, meaning: meaning.trim(), at: { start: from, end: from + written.length } }
}

/** `ch: chain; sc: single crochet`, `ch = chain, sc = single crochet`: between two entries on one line. */
const between = /;|[,.](?=[ \t]+[*_]*[\p{L}\d][\p{L}\d\s()/-]{0,24}?[*_]*[ \t]*(?:[:=–—]|[ \t]-[ \t]))/gu

/** The entries of a line. What follows a break stands for itself. */
function entriesIn(line: string, start: number): readonly Listed[] {
  const breaks = [...line.matchAll(between)].map(({ index }) => index)
  return [-1, ...breaks].flatMap((from, index) => {
    const part = line.slice(from + 1, breaks[index])
    return entryIn(part, start + from + 1) ?? []
  })
}

/** The row below the head of a table. */
const tableRule = /^[ \t]*\|?[ \t]*:?-{2,}:?[ \t]*\|/

/** The abbreviations that the draft lists itself, in a list, a table, lines of their own or one after another; empty where it has no list. */
export function listedAbbreviations(draft: Draft): readonly Listed[] {
  return abbreviationSections(draft).flatMap((section) => {
    let { start } = section
    return textAt(draft, section)
      .split('\n')
      .flatMap((line, index, lines) => {
        const found = tableRule.test(lines[index + 1] ?? '') ? [] : entriesIn(line, start)
        start += line.length + 1
        return found
      })
  })
}
