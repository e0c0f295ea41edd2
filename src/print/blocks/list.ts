import type { Block, BlockOf } from '../../pattern/node.ts'
import type { Composer, SetBlocks, Strips } from '../composer.ts'
import type { Run } from '../line.ts'
import { breakLines, measureRuns } from '../line.ts'
import type { Strip } from '../strip.ts'
import { after, drawLine } from '../strip.ts'
import type { Style } from '../style.ts'
import { tag } from '../tag.ts'

const leastIndent = 16
/** Between a mark and its text. */
const markSpace = 6

/** A list with hanging marks. A list of rows is set as rows: their labels are mark enough. */
export function setList(block: BlockOf<'list'>, composer: Composer, setBlocks: SetBlocks): Strips {
  if (block.items.every(startsWithRow)) return setBlocks(block.items.flat(), composer)
  const { styles, gaps } = composer.look
  const list = { ...composer, parent: tag('L', composer.parent, { numbering: block.ordered ? 'Decimal' : 'Disc' }) }
  const marked = block.items.map((item, index) => ({ item, mark: block.ordered ? `${block.start + index}.` : '•' }))
  const widths = marked.map(({ mark }) => measureRuns(composer, markRuns(mark, styles.soft)).whole + markSpace)
  const indent = Math.max(leastIndent, ...widths)
  return marked.flatMap(({ item, mark }, index) => {
    const strips = setItem(item, mark, indent, list, setBlocks)
    return index === 0 ? strips : after(gaps.item, strips)
  })
}

const startsWithRow = (item: readonly Block[]): boolean => item[0]?.type === 'row'

const markRuns = (mark: string, style: Style): readonly Run[] => [{ text: mark, style }]

function setItem(item: readonly Block[], mark: string, indent: number, list: Composer, setBlocks: SetBlocks): Strips {
  const { text, end } = list.frame
  const { styles, leading } = list.look
  const parent = tag('LI', list.parent)
  const label = tag('Lbl', parent)
  const line = breakLines(list, markRuns(mark, styles.soft), indent)[0]
  const frame = { start: text + indent, text: text + indent, end }
  const [first, ...rest] = setBlocks(item, { ...list, frame, parent: tag('LBody', parent) })
  if (first === undefined || line === undefined) return []
  const setting = { tag: label, x: text, width: indent, leading: leading.text }
  const marked: Strip = {
    ...first,
    draw: (pen, top) => {
      drawLine(pen, line, setting, top)
      first.draw(pen, top)
    },
  }
  return [marked, ...rest]
}
