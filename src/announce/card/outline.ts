import { type Faces, openFaces } from '../../print/face.ts'
import { loadFonts } from '../../print/fonts.ts'
import { breakLines, type Line } from '../../print/line.ts'
import type { Style } from '../../print/style.ts'

/** A text as shapes: no typeface of the machine that builds has a part in it. */
export interface Outlined {
  /** SVG paths, the first baseline at `top` plus the type's size. */
  readonly paths: string
  /** Lower end of the last line, pixels. */
  readonly bottom: number
}

export interface Setting {
  readonly style: Pick<Style, 'face' | 'size' | 'colour'>
  readonly x: number
  readonly top: number
  readonly width: number
  readonly leading: number
  /** The last of these ends in an ellipsis where the text is longer. */
  readonly lines: number
}

/** Sets a text in lines, as many as are allowed. */
export function outlined(text: string, setting: Setting): Outlined {
  const lines = linesOf(text, setting)
  const paths = lines.map((line, index) =>
    linePath(line, setting.x, setting.top + setting.style.size + index * setting.leading),
  )
  return { paths: paths.join(''), bottom: setting.top + lines.length * setting.leading }
}

/** How many lines a text takes; for choosing a smaller type. */
export function lineCount(text: string, { style, width }: Pick<Setting, 'style' | 'width'>): number {
  return breakLines(setter(), [{ text, style: whole(style) }], width).length
}

function linesOf(text: string, { style, width, lines: most }: Setting): readonly Line[] {
  const run = whole(style)
  const words = text.split(/\s+/)
  for (let count = words.length; count > 0; count -= 1) {
    const shown = count === words.length ? words.join(' ') : `${words.slice(0, count).join(' ')} …`
    const lines = breakLines(setter(), [{ text: shown, style: run }], width)
    if (lines.length <= most) return lines
  }
  return breakLines(setter(), [{ text, style: run }], width).slice(0, most)
}

function setter(): { faces: Faces; missing: Set<string> } {
  return { faces: openFaces(loadFonts()), missing: new Set() }
}

const whole = (style: Setting['style']): Style => ({
  ...style,
  tabular: false,
  strike: false,
  href: null,
  accent: style.colour,
})

function linePath({ fragments }: Line, left: number, baseline: number): string {
  return fragments
    .map(({ text, face, style, size, rise, x }) => {
      const scale = size / face.font.unitsPerEm
      const { glyphs, positions } = face.font.layout(text)
      let pen = 0
      const shapes = glyphs.map((glyph, index) => {
        const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[index] ?? {}
        const shape = `<path transform="translate(${pen + xOffset} ${yOffset})" d="${glyph.path.toSVG()}"/>`
        pen += xAdvance
        return shape
      })
      const place = `translate(${left + x} ${baseline - rise}) scale(${scale} ${-scale})`
      return `<g fill="${style.colour}" transform="${place}">${shapes.join('')}</g>`
    })
    .join('')
}
