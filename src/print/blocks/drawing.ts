import type { Drawing, DrawnValue, Label, Look } from '../../drawing/index.ts'
import { isLettered, lineStep } from '../../drawing/index.ts'
import { textForAll } from '../../measure/index.ts'
import type { BlockOf } from '../../pattern/node.ts'
import type { Composer, Strips } from '../composer.ts'
import { readRuns } from '../inline.ts'
import { breakLines } from '../line.ts'
import type { Look as PageLook } from '../look.ts'
import * as operators from '../operators.ts'
import type { Pen } from '../pen.ts'
import type { Strip } from '../strip.ts'
import { after, drawLine, heightOf, keptWithNext, lineStrips, together } from '../strip.ts'
import type { Style } from '../style.ts'
import type { Tag } from '../tag.ts'
import { tag } from '../tag.ts'
import { setKey } from './drawing-key.ts'

type Colours = PageLook['colours']

/** Highest that a drawing gets: a page with its heading and caption. */
const tallest = 560
const tint = '#eef2f0'

/** Operators before and after the path of a line. */
function looksIn({ ink, soft }: Colours): Readonly<Record<Look, readonly [before: string, paint: string]>> {
  return {
    shape: [`${operators.stroke(1.3, ink)}${operators.rgb(tint)} rg 1 j\n`, 'B'],
    thin: [operators.stroke(0.6, soft), 'S'],
    symbol: [`${operators.stroke(0.9, ink)}1 J 1 j\n`, 'S'],
    solid: [`${operators.rgb(ink)} rg\n`, 'f'],
  }
}

const commands = { M: 'm', L: 'l', C: 'c' } as const

/** `M 1 2 L 3 4 Z` → `1 2 m 3 4 l h` */
function pathOperators(path: string): string {
  return path.replace(/([MLC]) ([^MLCZ]*)|Z/g, (whole, command: keyof typeof commands | undefined, places: string) =>
    whole === 'Z' || command === undefined ? 'h ' : `${places.trim()} ${commands[command]} `,
  )
}

function linesOf({ lines }: Drawing, colours: Colours): string {
  const looks = looksIn(colours)
  return lines
    .map(({ look, path }) => {
      const [before, paint] = looks[look]
      return `${before}${pathOperators(path)}${paint}\n`
    })
    .join('')
}

/** Where a drawing lies on the page. */
export interface Place {
  readonly x: number
  readonly y: number
  readonly scale: number
}

const labelStyles = new WeakMap<Style, Map<string, Style>>()

/** One object for each look, as the setting of lines expects. */
function labelStyle(text: Style, size: number, face: Style['face']): Style {
  const own = labelStyles.get(text) ?? new Map<string, Style>()
  labelStyles.set(text, own)
  const style = own.get(`${face} ${size}`) ?? { ...text, face, size }
  own.set(`${face} ${size}`, style)
  return style
}

interface Shown {
  readonly text: string
  readonly face: Style['face']
  readonly y: number
}

/** The lines of a label as they are printed, for all sizes: its letter where they have no room. */
function shownLines({ lines, letter, y, size }: Label, lettered: boolean): readonly Shown[] {
  if (letter !== null && lettered) return [{ ...letter, face: 'textBold' }]
  const textOf = (line: string | DrawnValue): string => (typeof line === 'string' ? line : textForAll(line.segments))
  return lines.map((line, index) => ({ text: textOf(line), face: 'text', y: y + index * size * lineStep }))
}

function writeLabel(
  pen: Pen,
  label: Label,
  shown: readonly Shown[],
  figure: Tag,
  place: Place,
  composer: Composer,
): void {
  const { x, y, scale } = place
  const { styles } = composer.look
  for (const { text, face, y: baseline } of shown) {
    const runs = [{ text, style: labelStyle(styles.text, label.size * scale, face) }]
    const [line] = breakLines(composer, runs, Number.POSITIVE_INFINITY)
    if (line === undefined) continue
    const back = label.anchor === 'start' ? 0 : label.anchor === 'end' ? line.width : line.width / 2
    pen.write(line.fragments, figure, x + label.x * scale - back, y + baseline * scale)
  }
}

/** Draws a drawing with its labels; without a tag for the eye only. */
export function drawDrawing(
  pen: Pen,
  drawing: Drawing,
  element: Tag | null,
  place: Place,
  { composer, lettered }: { readonly composer: Composer; readonly lettered: boolean },
): void {
  const { x, y, scale } = place
  const box = { x, y, width: drawing.width * scale, height: drawing.height * scale }
  pen.drawing(linesOf(drawing, composer.look.colours), scale, element, box)
  for (const label of drawing.labels) {
    const write = (tag: Tag): void => writeLabel(pen, label, shownLines(label, lettered), tag, place, composer)
    if (element === null) pen.artifact('Layout', () => write(composer.parent))
    else write(element)
  }
}

/** Room for the heading above a drawing, and the space between them. */
function headingRoom({ look }: Composer): number {
  return (look.headings[2]?.leading ?? look.leading.text) * 2
}

const gap = 12
/** A drawing may be so much smaller than it could be to have all of its list on its page. */
const leastShare = 0.6

/** As large as the look wants it, where caption and list, or the first of its list, have room on its page. */
function scaleFor(
  drawing: Drawing,
  width: number,
  below: { readonly words: Strips; readonly list: Strips },
  composer: Composer,
): number {
  const height = composer.area - headingRoom(composer) - gap - heightOf(below.words, false) - roomBelow
  const over = (list: Strips): number => (height - heightOf(list, false)) / drawing.height
  const free = Math.min(composer.look.enlarged, width / drawing.width, tallest / drawing.height)
  const withAll = over(below.list)
  return Math.min(free, withAll > leastShare * free ? withAll : over(firstOf(below.list)))
}

/** A drawing with its caption and, where its labels are letters, its measures; below a chart the key to its symbols. */
export function setDrawing({ figure, caption, key }: BlockOf<'drawing'>, composer: Composer): Strips {
  const { frame, parent, area } = composer
  const { drawing, alt, kind } = figure
  const lettered = isLettered(figure)
  // A chart may take the gutter too.
  const start = kind === 'chart' ? frame.start : frame.text
  const within = { ...composer, frame: { ...frame, text: start } }
  const element = tag('Figure', parent, { alt })
  const words = captionStrips(caption, within)
  const list = [...(lettered ? measureStrips(figure, composer) : []), ...(key.length > 0 ? setKey(key, within) : [])]
  const scale = scaleFor(drawing, frame.end - start, { words, list }, composer)
  const x = start + (frame.end - start - drawing.width * scale) / 2
  const picture: Strip = {
    height: drawing.height * scale,
    gap,
    keep: true,
    draw: (pen, y) => drawDrawing(pen, drawing, element, { x, y, scale }, { composer, lettered }),
  }
  const all = withRoomBelow([picture, ...words, ...list])
  // What is longer than a page goes on after the first of its list.
  return heightOf(all, true) + headingRoom(composer) <= area ? together(all) : all
}

/** As many strips as stay with the first. */
function firstOf(strips: Strips): Strips {
  return strips.slice(0, strips.findIndex(({ keep }) => !keep) + 1)
}

const roomBelow = 6

/** What follows stands clear of the drawing's last line. */
function withRoomBelow(strips: Strips): Strips {
  return strips.map((strip, index) =>
    index < strips.length - 1 ? strip : { ...strip, height: strip.height + roomBelow },
  )
}

function captionStrips(caption: BlockOf<'drawing'>['caption'], composer: Composer): Strips {
  const { text, end } = composer.frame
  const { styles, leading } = composer.look
  const lines = breakLines(composer, readRuns(caption, { style: styles.soft, sizes: composer.sizes }), end - text)
  const setting = { tag: tag('P', composer.parent), x: text, width: end - text, leading: leading.small } as const
  return keptWithNext(lineStrips(lines, { ...setting, align: 'center' }, 6))
}

const letterRoom = 16

/** The measures by their letters, as a list. */
function measureStrips({ measures }: BlockOf<'drawing'>['figure'], composer: Composer): Strips {
  const { styles, leading } = composer.look
  const list = tag('L', composer.parent)
  const items = measures.flatMap(({ letter, name, value }) => {
    const item = tag('LI', list)
    const { text, end } = composer.frame
    const beside = { x: text, width: letterRoom, leading: leading.text, tag: tag('Lbl', item) }
    const setting = { x: text + letterRoom, width: end - text - letterRoom, leading: leading.text }
    const [mark] = breakLines(composer, [{ text: letter, style: styles.headCell }], letterRoom)
    const words = [{ text: `${name}: ${textForAll(value.segments)}`, style: styles.cell }]
    const [first, ...rest] = lineStrips(
      breakLines(composer, words, setting.width),
      { ...setting, tag: tag('LBody', item) },
      1,
    )
    if (first === undefined || mark === undefined) return []
    const draw: Strip['draw'] = (pen, top) => {
      drawLine(pen, mark, beside, top)
      first.draw(pen, top)
    }
    return together([{ ...first, draw }, ...rest])
  })
  return after(8, items)
}
