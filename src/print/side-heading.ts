import type { Composer, Strips } from './composer.ts'
import { breakLines } from './line.ts'
import type { Strip } from './strip.ts'
import { after, drawLine, heightOf, together } from './strip.ts'
import { tag } from './tag.ts'

/** Between a heading that stands above its text and that text. */
export const belowHeading = 4
/** Between the hairline and the text below it. */
const room = 8
/** A section that takes more of a page than this may go over to the next. */
const longest = 0.3
/** Strips of it, its head among them, that begin on one page. */
const opening = 4

/**
 * A section of the overview: a hairline, its heading in the gutter and its text beside it, or below where there is no
 * gutter or the text goes across the page; on one page, where that can be.
 */
export function sideHeading(title: string, strips: Strips, acrossPage: boolean, composer: Composer): Strips {
  const { start, text, end } = composer.frame
  const { section, colours, gutter } = composer.look
  const beside = gutter > 0 && !acrossPage
  const width = beside ? text - start - 8 : end - start
  const setting = { tag: tag('H2', composer.parent), x: start, width, leading: section.leading }
  const lines = breakLines(composer, [{ text: title, style: section.style }], width)
  const head: Strip = {
    height: beside ? room : room + lines.length * section.leading,
    gap: section.gap,
    keep: true,
    draw: (pen, top) => {
      pen.rule(start, top, end, top, colours.hairline, 0.5)
      pen.bookmark(title, 2, top)
      for (const [index, line] of lines.entries()) drawLine(pen, line, setting, top + room + index * section.leading)
    },
  }
  const all = [head, ...after(beside ? 0 : belowHeading, strips)]
  return heightOf(all, true) > composer.area * longest ? begunTogether(all) : together(all)
}

function begunTogether(strips: Strips): Strips {
  return strips.map((strip, index) => (index < opening - 1 ? { ...strip, keep: true } : strip))
}
