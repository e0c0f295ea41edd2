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
}

export const colours = {
  ink: '#20282b',
  soft: '#5b666a',
  accent: '#1d5c63',
  hairline: '#c4ccca',
} as const

/** Distance from one baseline to the next. */
export const leading = { text: 15.5, small: 13 } as const

const text: Style = { face: 'text', size: 10.5, colour: colours.ink, tabular: false, strike: false, href: null }

export const styles = {
  text,
  label: { ...text, face: 'textBold', size: 10 },
  stated: { ...text, face: 'textBold', size: 9.5, colour: colours.accent },
  only: { ...text, face: 'textItalic', colour: colours.accent },
  soft: { ...text, size: 9.5, colour: colours.soft },
  small: { ...text, size: 8, colour: colours.soft },
  code: { ...text, size: 10, colour: colours.accent },
  cell: { ...text, size: 9.5, tabular: true },
  headCell: { ...text, face: 'textBold', size: 9.5, tabular: true },
} as const satisfies Readonly<Record<string, Style>>

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
