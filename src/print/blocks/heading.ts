import type { BlockOf } from '../../pattern/node.ts'
import type { Composer, Strips } from '../composer.ts'
import { plainText, readRuns } from '../inline.ts'
import { breakLines } from '../line.ts'
import { keptWithNext, lineStrips } from '../strip.ts'
import type { Style } from '../style.ts'
import { styles } from '../style.ts'
import type { Role } from '../tag.ts'
import { tag } from '../tag.ts'

interface Look {
  readonly role: Role
  readonly style: Style
  readonly leading: number
  readonly gap: number
}

const title: Style = { ...styles.text, face: 'title' }

const looks: Readonly<Record<number, Look>> = {
  2: { role: 'H2', style: { ...title, size: 16 }, leading: 21, gap: 26 },
  3: { role: 'H3', style: { ...title, size: 12.5 }, leading: 17.5, gap: 18 },
  4: { role: 'H4', style: { ...styles.text, face: 'textBold', size: 10.5 }, leading: 15.5, gap: 14 },
}
const deeper: Look = { role: 'H5', style: { ...styles.text, face: 'textBoldItalic' }, leading: 15.5, gap: 12 }

/** A heading never stands alone at the foot of a page; one of the second level opens a piece. */
export function setHeading(block: BlockOf<'heading'>, composer: Composer): Strips {
  const { frame, parent, level, sizes } = composer
  const { role, style, leading, gap } = looks[level] ?? { ...deeper, role: level > 5 ? 'H6' : 'H5' }
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
