import type { Pattern } from '../pattern/pattern.ts'
import { setRuns } from './blocks/paragraph.ts'
import type { Composer, Strips } from './composer.ts'
import { flow } from './count-columns.ts'
import { type CountPiece, countRows } from './count-rows.ts'
import { breakLines } from './line.ts'
import type { Strip } from './strip.ts'
import { after, heightOf, lineStrips } from './strip.ts'
import { tag } from './tag.ts'

/**
 * The counts alone, rows down and sizes across: on one page, in as many columns and letters as small as that takes; a
 * pattern too long even so goes on.
 */
export function setCountSheet(pattern: Pattern, composer: Composer): readonly Strips[] {
  const wide = { ...composer, frame: { ...composer.frame, text: composer.frame.start } }
  const pieces = countRows(pattern)
  const top = setTop(pattern, pieces, wide)
  const [first, ...others] = flow(pieces, pattern.sizes, composer.area - heightOf(top, true), composer.area, wide)
  return [[...top, ...(first === undefined ? [] : [first])], ...others.map((strip): Strips => [strip])]
}

function setTop(pattern: Pattern, pieces: readonly CountPiece[], composer: Composer): Strips {
  const { frame, parent, look } = composer
  const style = { ...look.styles.text, face: 'title', size: pattern.title.length > 60 ? 14 : 18 } as const
  const width = frame.end - frame.start
  const setting = { tag: tag('H1', parent), x: frame.start, width, leading: style.size * 1.2 }
  const title = lineStrips(breakLines(composer, [{ text: `${pattern.title}: counts`, style }], width), setting, 0)
  const words = ['Stitches at the end of each row', pattern.sizes.length > 1 ? ', for each size.' : '.']
  if (pieces.some(({ rows }) => rows.some(({ numbers }) => numbers !== null)))
    words.push(' Small before a count is the row’s own number in that size.')
  const explained = setRuns([{ text: words.join(''), style: look.styles.soft }], composer, tag('P', parent))
  return [
    ...title.map((strip, index) => (index === 0 ? bookmarked(strip, pattern.title) : strip)),
    ...after(4, explained),
  ]
}

function bookmarked(strip: Strip, title: string): Strip {
  const draw: Strip['draw'] = (pen, top) => {
    pen.bookmark(title, 1, top)
    strip.draw(pen, top)
  }
  return { ...strip, draw }
}
