import type { FaceName } from './face.ts'

/** How a run of text looks. Sizes are in points. Runs that look the same share one object. */
export interface Style {
  readonly face: FaceName
  readonly size: number
  readonly colour: string
  /** Figures of one width, for columns. */
  readonly tabular: boolean
  readonly strike: boolean
  /** Where a click on the text leads; null for plain text. */
  readonly href: string | null
  /** Colour of what is set apart within it: links, words for some sizes. */
  readonly accent: string
}

/** The heavier face of the same slope; a heading's face is heavy already. */
export function strengthen(style: Style): Style {
  const heavier: Readonly<Record<FaceName, FaceName>> = {
    text: 'textBold',
    textBold: 'textBold',
    textItalic: 'textBoldItalic',
    textBoldItalic: 'textBoldItalic',
    title: 'title',
  }
  return { ...style, face: heavier[style.face] }
}

/** The sloped face of the same weight. */
export function slope(style: Style): Style {
  const sloped: Readonly<Record<FaceName, FaceName>> = {
    text: 'textItalic',
    textBold: 'textBoldItalic',
    textItalic: 'textItalic',
    textBoldItalic: 'textBoldItalic',
    title: 'title',
  }
  return { ...style, face: sloped[style.face] }
}
