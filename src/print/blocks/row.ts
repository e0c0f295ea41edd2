import { onlyWords } from '../../measure/index.ts'
import type { Inline, RowBlock } from '../../pattern/node.ts'
import type { Composer, Strips } from '../composer.ts'
import { plainText, readRuns } from '../inline.ts'
import type { Line, Run } from '../line.ts'
import { breakLines } from '../line.ts'
import type { Setting, Strip } from '../strip.ts'
import { after, drawLine, together } from '../strip.ts'
import { tag } from '../tag.ts'
import { notesFor, tickBox, tickBoxes } from '../tick-boxes.ts'
import { partsOf, type RowParts } from './row-parts.ts'
import { setRowTable } from './row-table.ts'

/** Least room for a box and a label beside the steps; in a narrower gutter the steps move in. */
const leastGutter = 78

/** Where a row stands: its box at `start`, its label from `label` on, its steps from `text` to `end`. */
interface Places {
  readonly start: number
  readonly label: number
  readonly text: number
  readonly end: number
}

/** A row: a box to tick, the label hanging in the gutter, the steps, the stated count at the right edge, boxes of a range. */
export function setRow(block: RowBlock, composer: Composer): Strips {
  const places = placesOf(composer)
  const item = { ...composer, parent: tag('LI', composer.parent) }
  const label = tag('Lbl', item.parent)
  const within = { ...item, parent: tag('LBody', item.parent) }
  const { parts, table } = takeApart(block, places, within)
  const hanging = { tag: label, x: places.label, width: hangingWidth(places, composer), leading: leadingOf(composer) }
  const { text, end } = places
  const body = { tag: within.parent, x: text, width: end - text, leading: leadingOf(composer) }
  const steps = setLabel(parts, item, hanging, bodyStrips(block, parts, within, body))
  const strips = addTicks(block, [...steps, ...table], places, item)
  return together(after(composer.look.gaps.row, strips))
}

const leadingOf = ({ look }: Composer): number => look.leading.text

function placesOf({ frame, look }: Composer): Places {
  const label = frame.start + look.box.pitch + 3
  if (look.gutter === 0) return { start: frame.start, label, text: label, end: frame.end }
  const text = frame.text - frame.start < leastGutter ? frame.start + leastGutter : frame.text
  return { start: frame.start, label, text, end: frame.end }
}

/** Where labels stand above the steps they may take the whole line. */
function hangingWidth({ label, text, end }: Places, { look }: Composer): number {
  return look.gutter === 0 ? end - label : text - label - 8
}

/** The row with its numbers in a table, where there are columns for that and all find room in them; else as it is. */
function takeApart(
  block: RowBlock,
  places: Places,
  composer: Composer,
): { readonly parts: RowParts; readonly table: Strips } {
  const whole = { parts: { label: block.label, steps: block.steps, stated: block.stated, lines: [] }, table: [] }
  if (composer.columns === null) return whole
  const parts = partsOf(block, composer.sizes.length)
  if (parts.lines.length === 0) return whole
  const table = setRowTable(parts.lines, composer.columns, places.label, composer)
  return table === null ? whole : { parts, table }
}

/** Boxes for the rows of a range below them; beside any other row one. */
function addTicks(block: RowBlock, strips: Strips, { start, text, end }: Places, composer: Composer): Strips {
  const times = composer.timesOf(block)
  const most = Math.max(...times)
  if (most <= 1) return tickBox(strips, start, composer)
  return [...strips, ...tickBoxes(most, notesFor(times, composer.sizes), text, end - text, composer)]
}

/** Adds the label to the steps: beside them where two lines suffice, else above them. */
function setLabel(parts: RowParts, composer: Composer, hanging: Setting, steps: Strips): Strips {
  if (parts.label.length === 0) return steps
  const { look, frame, sizes } = composer
  const runs = readRuns(parts.label, { style: look.styles.label, sizes })
  const lines = breakLines(composer, runs, hanging.width)
  if (look.gutter > 0 && lines.length <= 2) return besides(lines, hanging, steps)
  const above = { ...hanging, width: frame.end - hanging.x }
  return [...breakLines(composer, runs, above.width).map((line) => strip(line, above)), ...steps]
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
function bodyStrips(block: RowBlock, parts: RowParts, composer: Composer, setting: Setting): Strips {
  const steps = breakLines(composer, stepRuns(block, parts, composer), setting.width)
  const strips = steps.map((line) => strip(line, setting))
  if (parts.stated.length === 0) return strips
  const runs = readRuns(parts.stated, { style: composer.look.styles.stated, sizes: composer.sizes })
  const lines = breakLines(composer, runs, setting.width)
  const stated = lines.map((line) => strip(line, { ...setting, align: 'right' }))
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

function stepRuns(block: RowBlock, { steps }: RowParts, { sizes, look }: Composer): readonly Run[] {
  const runs = readRuns(steps, { style: look.styles.text, sizes })
  if (block.only === null || namesSizes(block.label, sizes) || namesSizes(block.steps, sizes)) return runs
  return [{ text: `${onlyWords(sizes, block.only)}: `, style: look.styles.only }, ...runs]
}

/** The designer may have said it already, in the row's own words. */
function namesSizes(words: readonly Inline[], sizes: readonly string[]): boolean {
  return /^(For )?Sizes? /i.test(plainText(words, sizes))
}
