import type { Line } from './line.ts'
import type { Pen } from './pen.ts'
import type { Tag } from './tag.ts'

/**
 * A horizontal strip of a page that is never cut: mostly a line of text. Sizing a block gives its strips;
 * only when every strip has its page is anything drawn. All measures are points.
 */
export interface Strip {
  readonly height: number
  /** Space above, left out at the top of a page. */
  readonly gap: number
  /** Stays on one page with the next strip, where that can be. */
  readonly keep: boolean
  /** Draws it with its upper edge at `top`, counted from the top of the page. */
  readonly draw: (pen: Pen, top: number) => void
  /** Drawn again above it where it begins a page: the header of a table. */
  readonly repeats?: readonly Strip[]
  /** The piece that begins here, named at the head of the pages that follow. */
  readonly opens?: string
  /** Draws it in all that its page has left, `height` points; only for the last strip. */
  readonly fills?: (pen: Pen, top: number, height: number) => void
}

/** Where lines of text stand. */
export interface Setting {
  readonly tag: Tag
  readonly x: number
  /** Width in which lines are aligned. */
  readonly width: number
  readonly leading: number
  readonly align?: 'left' | 'right' | 'center'
}

/** One strip a line; the first two and the last two lines of a paragraph stay together. */
export function lineStrips(lines: readonly Line[], setting: Setting, gap: number): readonly Strip[] {
  return lines.map((line, index) => ({
    height: setting.leading,
    gap: index === 0 ? gap : 0,
    keep: lines.length > 1 && (index === 0 || index === lines.length - 2),
    draw: (pen, top) => drawLine(pen, line, setting, top),
  }))
}

/** Draws one line with its upper edge at `top`. */
export function drawLine(pen: Pen, line: Line, { tag, x, width, leading, align = 'left' }: Setting, top: number): void {
  const room = width - line.width
  const left = align === 'right' ? x + room : align === 'center' ? x + room / 2 : x
  pen.write(line.fragments, tag, left, top + leading * baseline)
}

/** Where letters stand in a line, as a part of its leading: lines side by side agree, whatever their sizes. */
const baseline = 0.73

/** All strips on one page, where that can be; the next may go to another. */
export function together(strips: readonly Strip[]): readonly Strip[] {
  return strips.map((strip, index) => ({ ...strip, keep: index < strips.length - 1 }))
}

/** The strips, the last of them kept with what follows. */
export function keptWithNext(strips: readonly Strip[]): readonly Strip[] {
  return strips.map((strip) => ({ ...strip, keep: true }))
}

/** The strips with `gap` above the first. */
export function after(gap: number, strips: readonly Strip[]): readonly Strip[] {
  return strips.map((strip, index) => (index === 0 ? { ...strip, gap } : strip))
}

/** Adds something to the drawing of every strip, such as a bar at its side that leaves no breaks between them. */
export function decorate(
  strips: readonly Strip[],
  decoration: (pen: Pen, top: number, height: number) => void,
): readonly Strip[] {
  return strips.map((strip, index) => ({
    ...strip,
    draw: (pen, top) => {
      const reach = index === 0 ? 0 : strip.gap
      decoration(pen, top - reach, strip.height + reach)
      strip.draw(pen, top)
    },
  }))
}

/** Height of strips that stand on one page; without the gap above the first where that one is at the top. */
export function heightOf(strips: readonly Strip[], atTop: boolean): number {
  return strips.reduce((sum, strip, index) => sum + strip.height + (atTop && index === 0 ? 0 : strip.gap), 0)
}
