import { onlyWords } from '../../measure/index.ts'
import type { Inline, RowBlock } from '../../pattern/node.ts'
import type { Composer, Strips } from '../composer.ts'
import { plainText, readRuns } from '../inline.ts'
import type { Line, Run } from '../line.ts'
import { breakLines } from '../line.ts'
import type { Setting, Strip } from '../strip.ts'
import { after, drawLine, together } from '../strip.ts'
import { leading, styles } from '../style.ts'
import { tag } from '../tag.ts'
import { tickBox, tickBoxes } from '../tick-boxes.ts'

const rowGap = 6
const roomForBox = 14
/** Least room for a box and a label beside the steps; in a narrower gutter the steps move in. */
const leastGutter = 78
/** A range of more rows than this is ticked off once. */
const mostBoxes = 60

/** A row: a box to tick, the label hanging in the gutter, the steps, the stated count at the right edge. */
export function setRow(block: RowBlock, composer: Composer): Strips {
  const { start, end } = composer.frame
  const text = composer.frame.text - start < leastGutter ? start + leastGutter : composer.frame.text
  const item = tag('LI', composer.parent)
  const hanging = {
    tag: tag('Lbl', item),
    x: start + roomForBox,
    width: text - start - roomForBox - 8,
    leading: leading.text,
  }
  const addLabel = setLabel(block, composer, hanging)
  const body = { tag: tag('LBody', item), x: text, width: end - text, leading: leading.text }
  const steps = bodyStrips(block, composer, body)
  const count = block.times
  const strips =
    count > 1 && count <= mostBoxes
      ? addLabel([...steps, ...tickBoxes(count, text, body.width)])
      : tickBox(addLabel(steps), start)
  return together(after(rowGap, strips))
}

/** Adds the label to the steps: beside them where two lines suffice, else above them. */
function setLabel(block: RowBlock, composer: Composer, hanging: Setting): (steps: Strips) => Strips {
  const runs = readRuns(block.label, { style: styles.label, sizes: composer.sizes })
  const lines = breakLines(composer, runs, hanging.width)
  if (lines.length <= 2) return (steps) => besides(lines, hanging, steps)
  const above = { ...hanging, width: composer.frame.end - hanging.x }
  return (steps) => [...breakLines(composer, runs, above.width).map((line) => strip(line, above)), ...steps]
}

function besides(label: readonly Line[], setting: Setting, steps: Strips): Strips {
  const filler = label.slice(steps.length).map(() => blank(setting.leading))
  return [...steps, ...filler].map((step, index) => {
    if (index > 0) return step
    const draw: Strip['draw'] = (pen, top) => {
      for (const [index, line] of label.entries()) drawLine(pen, line, setting, top + index * setting.leading)
      step.draw(pen, top)
    }
    return { ...step, draw }
  })
}

function strip(line: Line, setting: Setting): Strip {
  return { ...blank(setting.leading), draw: (pen, top) => drawLine(pen, line, setting, top) }
}

const blank = (height: number): Strip => ({ height, gap: 0, keep: true, draw: () => {} })

/** The stated count shares the last line of the steps where there is room, and follows it where there is not. */
function bodyStrips(block: RowBlock, composer: Composer, setting: Setting): Strips {
  const steps = breakLines(composer, stepRuns(block, composer), setting.width)
  const strips = steps.map((line) => strip(line, setting))
  if (block.stated.length === 0) return strips
  const runs = readRuns(block.stated, { style: styles.stated, sizes: composer.sizes })
  const right: Setting = { ...setting, align: 'right' }
  const lines = breakLines(composer, runs, setting.width)
  const stated = lines.map((line) => strip(line, right))
  const room = setting.width - (steps.at(-1)?.width ?? 0) - 14
  const fits = lines.length === 1 && (lines[0]?.width ?? 0) <= room
  return fits ? overlay(strips, stated) : [...strips, ...stated]
}

/** Draws what fits on one line into the last of the strips. */
function overlay(strips: Strips, [line]: Strips): Strips {
  return strips.map((strip, index) => {
    if (index < strips.length - 1 || line === undefined) return strip
    const draw: Strip['draw'] = (pen, top) => {
      strip.draw(pen, top)
      line.draw(pen, top)
    }
    return { ...strip, draw }
  })
}

function stepRuns(block: RowBlock, { sizes }: Composer): readonly Run[] {
  const steps = readRuns(block.steps, { style: styles.text, sizes })
  if (block.only === null || namesSizes(block.label, sizes) || namesSizes(block.steps, sizes)) return steps
  return [{ text: `${onlyWords(sizes, block.only)}: `, style: styles.only }, ...steps]
}

/** The designer may have said it already, in the row's own words. */
function namesSizes(words: readonly Inline[], sizes: readonly string[]): boolean {
  return /^(For )?Sizes? /i.test(plainText(words, sizes))
}
