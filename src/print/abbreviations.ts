import type { Abbreviation } from '../pattern/pattern.ts'
import type { Composer, Strips } from './composer.ts'
import type { Line } from './line.ts'
import { breakLines } from './line.ts'
import type { Pen } from './pen.ts'
import type { Strip } from './strip.ts'
import { drawLine, together } from './strip.ts'
import { styles } from './style.ts'
import type { Tag } from './tag.ts'
import { tag } from './tag.ts'

const columnSpace = 20
const termWidth = 58
const leading = 14
const termStyle = { ...styles.label, size: 9.5 }
const meaningStyle = { ...styles.text, size: 9.5 }

interface Entry {
  readonly term: readonly Line[]
  readonly meaning: readonly Line[]
  readonly tags: readonly [term: Tag, meaning: Tag]
}

/** Abbreviations in two columns that read down, then across. */
export function setAbbreviations(abbreviations: readonly Abbreviation[], composer: Composer): Strips {
  const { text, end } = composer.frame
  const width = (end - text - columnSpace) / 2
  const list = tag('L', composer.parent, { numbering: 'None' })
  const entries = abbreviations.map((abbreviation) => setEntry(abbreviation, width, list, composer))
  const tags = entries.flatMap((entry) => entry.tags)
  const half = Math.ceil(entries.length / 2)
  const strips = entries.slice(0, half).map((left, index) => {
    const right = entries[index + half]
    const strip = pairStrip(left, right, text, width)
    if (index > 0) return strip
    const draw: Strip['draw'] = (pen, top) => {
      pen.announce(tags)
      strip.draw(pen, top)
    }
    return { ...strip, draw }
  })
  return together(strips)
}

function setEntry({ abbreviation, meaning }: Abbreviation, width: number, list: Tag, composer: Composer): Entry {
  const item = tag('LI', list)
  return {
    term: breakLines(composer, [{ text: abbreviation, style: termStyle }], termWidth - 6),
    meaning: breakLines(composer, [{ text: meaning, style: meaningStyle }], width - termWidth),
    tags: [tag('Lbl', item, { asWritten: true }), tag('LBody', item, { asWritten: true })],
  }
}

function pairStrip(left: Entry, right: Entry | undefined, x: number, width: number): Strip {
  const lines = Math.max(linesOf(left), right === undefined ? 0 : linesOf(right))
  const draw: Strip['draw'] = (pen, top) => {
    drawEntry(pen, left, x, top)
    if (right !== undefined) drawEntry(pen, right, x + width + columnSpace, top)
  }
  return { height: lines * leading, gap: 2, keep: false, draw }
}

const linesOf = ({ term, meaning }: Entry): number => Math.max(term.length, meaning.length)

function drawEntry(pen: Pen, { term, meaning, tags }: Entry, x: number, top: number): void {
  const [termTag, meaningTag] = tags
  const setting = { width: 0, leading }
  for (const [index, line] of term.entries())
    drawLine(pen, line, { ...setting, tag: termTag, x }, top + index * leading)
  for (const [index, line] of meaning.entries()) {
    drawLine(pen, line, { ...setting, tag: meaningTag, x: x + termWidth }, top + index * leading)
  }
}
