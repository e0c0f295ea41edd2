import type { Properties } from 'hast'
import type { BlockContent, PhrasingContent } from 'mdast'
import { isLettered, lineStep } from '../drawing/drawing.ts'
import type { Drawing, DrawnValue, Label, Look } from '../drawing/index.ts'
import type { BlockOf } from '../pattern/node.ts'
import type { Context } from './context.ts'
import { type BlockElement, blockElement, phrasingElement } from './element.ts'
import { segmentClass, systemClass } from './sizes.ts'
import { value } from './value.ts'

/** How lines look; by attributes, since a page allows no styles of its own, and in the colour of the text around. */
const looks: Readonly<Record<Look, Properties>> = {
  shape: {
    stroke: 'currentColor',
    strokeWidth: '1.6',
    strokeLinejoin: 'round',
    fill: 'currentColor',
    fillOpacity: '0.07',
  },
  thin: { stroke: 'currentColor', strokeWidth: '0.75', strokeOpacity: '0.75', fill: 'none' },
  symbol: {
    stroke: 'currentColor',
    strokeWidth: '1.1',
    strokeLinecap: 'round',
    strokeLinejoin: 'round',
    fill: 'none',
  },
  solid: { fill: 'currentColor' },
}

/** Drawn this much larger than its own points, where there is room: letters are then as large as the page's small ones. */
const enlarged = 1.3

/** A drawing under its caption, and below it what it does not say itself. */
export function drawing({ id, caption, figure, key }: BlockOf<'drawing'>, context: Context): BlockContent {
  const { drawing, alt, kind } = figure
  const lettered = isLettered(figure)
  const picture = svg(drawing, { role: 'img', ariaLabel: alt }, enlarged, lettered)
  return blockElement('figure', { className: ['drawing', kind], id }, [
    blockElement('figcaption', {}, context.inlines(caption)),
    kind === 'chart' ? boxed(picture) : picture,
    ...(lettered ? [measures(figure, context)] : []),
    ...(key.length > 0 ? [keyList(key, context)] : []),
  ])
}

/** A chart keeps its size, for its symbols must be read: where the page is too narrow it scrolls, by keyboard too. */
function boxed(picture: BlockElement): BlockElement {
  return blockElement('div', { className: ['chart-box'], role: 'group', ariaLabel: 'Chart', tabIndex: 0 }, [picture])
}

function svg(
  { width, height, lines, labels }: Drawing,
  properties: Properties,
  scale: number,
  lettered: boolean,
): BlockElement {
  const [wide, high] = [Math.ceil(width), Math.ceil(height)]
  const size = { width: String(Math.round(wide * scale)), height: String(Math.round(high * scale)) }
  return blockElement('svg', { viewBox: `0 0 ${wide} ${high}`, ...size, ...properties }, [
    ...strokes(lines),
    ...parted(labels.flatMap((each) => label(each, lettered))),
  ])
}

/** Lines of one look that follow each other as one path. */
function strokes(lines: Drawing['lines']): BlockElement[] {
  const runs: { look: Look; paths: string[] }[] = []
  for (const { look, path } of lines) {
    const last = runs.at(-1)
    if (last?.look === look) last.paths.push(path)
    else runs.push({ look, paths: [path] })
  }
  return runs.map(({ look, paths }) => blockElement('path', { d: paths.join(' '), ...looks[look] }, []))
}

/** A label; where sizes stand side by side and have no room, its letter, and its lines for the one size chosen. */
function label({ x, y, anchor, size, lines, letter }: Label, lettered: boolean): BlockElement[] {
  const text = (line: string | DrawnValue, top: number, more: Properties = {}): BlockElement => {
    const place = { x: number(x), y: number(top), textAnchor: anchor, fontSize: number(size), fill: 'currentColor' }
    return blockElement('text', { ...more, ...place }, [lineOf(line)])
  }
  const whole = lines.map((line, index) => text(line, y + index * size * lineStep))
  if (letter === null || !lettered) return whole
  const one = blockElement('g', { className: ['one'] }, parted(whole))
  return [text(letter.text, letter.y, { className: ['letter', 'c'] }), one]
}

/** With blanks between, so that copied numbers stay apart. */
function parted(elements: readonly BlockElement[]): (BlockElement | PhrasingContent)[] {
  return elements.flatMap((each) => [each, { type: 'text', value: ' ' } as const])
}

function lineOf(line: string | DrawnValue): PhrasingContent {
  if (typeof line === 'string') return { type: 'text', value: line }
  const segments = line.segments.map(({ text, show, system }): PhrasingContent => {
    const className = [...(segmentClass(show) ?? []), ...(system === undefined ? [] : [systemClass(system)])]
    const words: PhrasingContent = { type: 'text', value: text }
    return className.length === 0 ? words : phrasingElement('tspan', { className }, [words])
  })
  return phrasingElement('tspan', { className: ['value'], dataV: line.id }, segments)
}

const number = (value: number): string => String(Math.round(value * 100) / 100)

/** The symbols of a chart, each with its words. */
function keyList(key: BlockOf<'drawing'>['key'], context: Context): BlockElement {
  const items = key.map(({ symbol, words }) =>
    blockElement('li', {}, [
      svg(symbol, { ariaHidden: 'true' }, enlarged, false),
      phrasingElement('span', {}, context.inlines(words)),
    ]),
  )
  return blockElement('ul', { className: ['chart-key'], role: 'list' }, items)
}

function measures({ measures }: BlockOf<'drawing'>['figure'], context: Context): BlockElement {
  return blockElement(
    'dl',
    { className: ['measures'] },
    measures.map(({ letter, name, value: measured }) =>
      blockElement('div', {}, [
        blockElement('dt', {}, [
          phrasingElement('span', { className: ['letter', 'c'] }, [{ type: 'text', value: `${letter} ` }]),
          { type: 'text', value: name },
        ]),
        blockElement('dd', {}, [value(measured, context)]),
      ]),
    ),
  )
}
