import type { BlockOf } from '../../pattern/node.ts'
import type { Composer, Strips } from '../composer.ts'
import { plainText, readRuns } from '../inline.ts'
import { breakLines } from '../line.ts'
import { keptWithNext, lineStrips } from '../strip.ts'
import { tag } from '../tag.ts'

/** A heading never stands alone at the foot of a page; one of the second level opens a piece. */
export function setHeading(block: BlockOf<'heading'>, composer: Composer): Strips {
  const { frame, parent, level, sizes, look } = composer
  const { role, style, leading, gap } = look.headings[level] ?? look.section
  const width = frame.end - frame.start
  const lines = breakLines(composer, readRuns(block.children, { style, sizes }), width)
  const words = plainText(block.children, sizes)
  const strips = keptWithNext(lineStrips(lines, { tag: tag(role, parent), x: frame.start, width, leading }, gap))
  return strips.map((strip, index) => {
    if (index > 0) return strip
    const draw: typeof strip.draw = (pen, top) => {
      pen.bookmark(words, level, top)
      strip.draw(pen, top)
    }
    return level === 2 ? { ...strip, draw, opens: words } : { ...strip, draw }
  })
}
