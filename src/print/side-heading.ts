import type { Composer, Strips } from './composer.ts'
import { breakLines } from './line.ts'
import type { Strip } from './strip.ts'
import { after, drawLine, together } from './strip.ts'
import { colours, leading, styles } from './style.ts'
import { tag } from './tag.ts'

const sectionGap = 16
const style = { ...styles.text, face: 'title', size: 11.5 } as const

/** A section of the overview: a hairline, its heading in the gutter, its text beside it; on one page, where that can be. */
export function sideHeading(title: string, strips: Strips, composer: Composer): Strips {
  const { start, text, end } = composer.frame
  const heading = tag('H2', composer.parent)
  const setting = { tag: heading, x: start, width: text - start, leading: leading.text }
  const lines = breakLines(composer, [{ text: title, style }], text - start - 8)
  const room = 8
  const head: Strip = {
    height: room,
    gap: sectionGap,
    keep: true,
    draw: (pen, top) => {
      pen.rule(start, top, end, top, colours.hairline, 0.5)
      pen.bookmark(title, 2, top)
      for (const [index, line] of lines.entries()) drawLine(pen, line, setting, top + room + index * leading.text)
    },
  }
  return together([head, ...after(0, strips)])
}
