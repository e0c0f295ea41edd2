import type { Shape } from './shape.ts'

/**
 * Operators of a content stream as text (ISO 32000-1, annex A). They are written here, not by PDFKit: a page
 * has a thousand of them, and its general calls lay out each text anew. Places count in points from the top
 * left corner, as PDFKit turns its pages.
 */

/** Four places after the point: with three, letters come out a subpixel away from where they were measured. */
export function number(value: number): string {
  return String(Math.round(value * 1e4) / 1e4)
}

const colours = new Map<string, string>()

/** Red, green and blue of a colour such as `#1d5c63`. */
export function rgb(colour: string): string {
  const before = colours.get(colour)
  if (before !== undefined) return before
  const parts = [1, 3, 5].map((start) => number(Number.parseInt(colour.slice(start, start + 2), 16) / 255))
  const text = parts.join(' ')
  colours.set(colour, text)
  return text
}

/** A line in the stroke that is set. */
export function line(x1: number, y1: number, x2: number, y2: number): string {
  return `${number(x1)} ${number(y1)} m ${number(x2)} ${number(y2)} l S\n`
}

/** How far the handles of a quarter of a circle reach, as a part of its radius. */
const handle = (4 * (Math.SQRT2 - 1)) / 3

/** The outline of a square with rounded corners, from the upper left corner of its box. */
export function roundedSquare(side: number, radius: number): string {
  const [near, far] = [radius * (1 - handle), side - radius * (1 - handle)]
  const corner = (...places: readonly number[]): string => `${places.map(number).join(' ')} c\n`
  const to = (x: number, y: number): string => `${number(x)} ${number(y)} l\n`
  return [
    `${number(radius)} 0 m\n`,
    to(side - radius, 0),
    corner(far, 0, side, near, side, radius),
    to(side, side - radius),
    corner(side, far, far, side, side - radius, side),
    to(radius, side),
    corner(near, side, 0, far, 0, side - radius),
    to(0, radius),
    corner(0, near, near, 0, radius, 0),
    'h\n',
  ].join('')
}

/** An outline drawn at each of some places; as it is the same text each time, it takes little room. */
export function repeated(outline: string, places: readonly (readonly [x: number, y: number])[]): string {
  return places.map(([x, y]) => moved(`${outline}S `, x, y)).join('')
}

/** A drawing with its upper left corner at a place; what it sets is forgotten after. */
export function moved(drawing: string, x: number, y: number): string {
  return `q 1 0 0 1 ${number(x)} ${number(y)} cm\n${drawing}Q\n`
}

/** Rectangles, each by its left and upper edge, width and height, filled at once. */
export function filled(rectangles: readonly (readonly number[])[], colour: string): string {
  return `${rgb(colour)} rg\n${rectangles.map((sides) => `${sides.map(number).join(' ')} re\n`).join('')}f\n`
}

/** Width and colour of the lines that follow. */
export function stroke(thickness: number, colour: string): string {
  return `${number(thickness)} w ${rgb(colour)} RG\n`
}

/**
 * Words from a place on their baseline, in the font and colour that are set; the page is upside down, so the letters
 * are turned. `spoken` gives for a word how it is read out where that is not as it is written, else null.
 */
export function words(
  shapes: readonly Shape[],
  size: number,
  x: number,
  baseline: number,
  spoken: (word: string) => string | null,
): string {
  let written = ''
  let shown = ''
  let lift = 0
  const interrupt = (operator: string): void => {
    if (shown !== '') written += `[${shown}] TJ `
    shown = ''
    written += operator
  }
  for (const { text, pieces } of shapes) {
    const expansion = spoken(text)
    if (expansion !== null) interrupt(beginSpan('E', expansion))
    for (const piece of pieces) {
      if (piece.lift !== lift) interrupt(`${number(piece.lift * size)} Ts `)
      lift = piece.lift
      shown += piece.show
    }
    if (expansion !== null) interrupt(endSpan)
  }
  interrupt(lift === 0 ? '' : '0 Ts ')
  return `BT 1 0 0 -1 ${number(x)} ${number(baseline)} Tm ${written}ET\n`
}

/**
 * Letters from here on are read otherwise than they look (ISO 32000-1, 14.9.4 and 14.9.5): `E` is what an abbreviation
 * stands for, `ActualText` the characters of what was put together from others.
 */
export function beginSpan(entry: 'E' | 'ActualText', text: string): string {
  return `/Span <</${entry} ${textString(text)}>> BDC\n`
}

export const endSpan = 'EMC\n'

/** A text string: as it is where it is plain, else in UTF-16 with its byte order mark (ISO 32000-1, 7.9.2.2). */
function textString(text: string): string {
  if (/^[\x20-\x7e]*$/.test(text)) return `(${text.replace(/[()\\]/g, '\\$&')})`
  const units = Array.from({ length: text.length }, (_, index) => text.charCodeAt(index).toString(16).padStart(4, '0'))
  return `<feff${units.join('')}>`
}
