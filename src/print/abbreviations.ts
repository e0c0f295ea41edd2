import type { Abbreviation } from '../pattern/pattern.ts'
import type { Composer, Strips } from './composer.ts'
import type { Line } from './line.ts'
import { breakLines, measureRuns } from './line.ts'
import type { Pen } from './pen.ts'
import type { Strip } from './strip.ts'
import { drawLine, together } from './strip.ts'
import type { Tag } from './tag.ts'
import { tag } from './tag.ts'

const columnSpace = 20
const termSpace = 12

interface Entry {
  readonly term: readonly Line[]
  readonly meaning: readonly Line[]
  readonly tags: readonly [term: Tag, meaning: Tag]
}

/** Where the entries of one column stand. */
interface Column {
  readonly x: number
  readonly meaning: number
  readonly leading: number
}

/** Abbreviations in two columns that read down, then across; in one where letters are large. */
export function setAbbreviations(abbreviations: readonly Abbreviation[], composer: Composer): Strips {
  const { text, end } = composer.frame
  const { gutter, leading } = composer.look
  const count = gutter > 0 ? 2 : 1
  const width = (end - text - columnSpace * (count - 1)) / count
  const term = termWidth(abbreviations, width, composer)
  const list = tag('L', composer.parent, { numbering: 'None' })
  const entries = abbreviations.map((each) => setEntry(each, term, width - term, list, composer))
  const columns = Array.from({ length: count }, (_, column) => {
    const x = text + column * (width + columnSpace)
    return { x, meaning: x + term, leading: leading.small + 1 }
  })
  return together(announceAll(rowsOf(entries, columns), entries))
}

/** As wide as the widest abbreviation wants it, but no more than half of the column. */
function termWidth(abbreviations: readonly Abbreviation[], width: number, composer: Composer): number {
  const style = composer.look.styles.headCell
  const widths = abbreviations.map(({ abbreviation }) => measureRuns(composer, [{ text: abbreviation, style }]).whole)
  return Math.min(width / 2, Math.max(46, ...widths) + termSpace)
}

function setEntry(
  { abbreviation, meaning }: Abbreviation,
  term: number,
  width: number,
  list: Tag,
  composer: Composer,
): Entry {
  const { headCell, cell } = composer.look.styles
  const item = tag('LI', list)
  return {
    term: breakLines(composer, [{ text: abbreviation, style: headCell }], term - termSpace / 2),
    meaning: breakLines(composer, [{ text: meaning, style: cell }], width),
    tags: [tag('Lbl', item, { asWritten: true }), tag('LBody', item, { asWritten: true })],
  }
}

function rowsOf(entries: readonly Entry[], columns: readonly Column[]): Strips {
  const down = Math.ceil(entries.length / columns.length)
  return Array.from({ length: down }, (_, row): Strip => {
    const across = columns.flatMap((column, index) => {
      const entry = entries[row + index * down]
      return entry === undefined ? [] : [{ entry, column }]
    })
    const lines = Math.max(...across.map(({ entry }) => Math.max(entry.term.length, entry.meaning.length)))
    const draw: Strip['draw'] = (pen, top) => {
      for (const { entry, column } of across) drawEntry(pen, entry, column, top)
    }
    return { height: lines * (columns[0]?.leading ?? 0), gap: 2, keep: false, draw }
  })
}

/** They are read down, though they are drawn across. */
function announceAll(strips: Strips, entries: readonly Entry[]): Strips {
  return strips.map((strip, index) => {
    if (index > 0) return strip
    const draw: Strip['draw'] = (pen, top) => {
      pen.announce(entries.flatMap((entry) => entry.tags))
      strip.draw(pen, top)
    }
    return { ...strip, draw }
  })
}

function drawEntry(
  pen: Pen,
  { term, meaning, tags }: Entry,
  { x, meaning: across, leading }: Column,
  top: number,
): void {
  const [termTag, meaningTag] = tags
  const setting = { width: 0, leading }
  for (const [index, line] of term.entries())
    drawLine(pen, line, { ...setting, tag: termTag, x }, top + index * leading)
  for (const [index, line] of meaning.entries())
    drawLine(pen, line, { ...setting, tag: meaningTag, x: across }, top + index * leading)
}
