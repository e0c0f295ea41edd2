import type { Style } from './style.ts'
import type { Role } from './tag.ts'

/** How a whole print-out looks. Measures are points. */
export interface Look {
  readonly colours: Readonly<Record<'ink' | 'soft' | 'accent' | 'hairline', string>>
  readonly styles: Readonly<Record<StyleName, Style>>
  /** Distances from one baseline to the next. */
  readonly leading: { readonly text: number; readonly small: number; readonly foot: number }
  readonly margin: { readonly side: number; readonly top: number; readonly bottom: number }
  /** Upper edge of the head line from the top of the page, of the first foot line from its bottom. */
  readonly head: number
  readonly foot: number
  /** Room in which labels hang beside the text; 0 where they stand above it. */
  readonly gutter: number
  /** Type sizes of titles: of a short one, a longer one, and one of several lines. */
  readonly titles: readonly [short: number, longer: number, longest: number]
  readonly headings: Readonly<Record<number, HeadingLook>>
  readonly section: HeadingLook
  readonly gaps: { readonly paragraph: number; readonly item: number; readonly row: number }
  readonly box: BoxLook
  /** How much larger drawings are than they were made, where there is room: their words are made for everyday print. */
  readonly enlarged: number
  /** Smallest type in tables that would be too wide otherwise. */
  readonly tightest: number
  /** Room for the cover beside the title; null where it stands below. */
  readonly coverBeside: { readonly width: number; readonly height: number } | null
}

export type StyleName = 'text' | 'label' | 'stated' | 'only' | 'soft' | 'small' | 'code' | 'cell' | 'headCell' | 'tiny'

export interface HeadingLook {
  readonly role: Role
  readonly style: Style
  readonly leading: number
  readonly gap: number
}

/** Boxes to tick: their side, the way from one to the next, the space after five. */
export interface BoxLook {
  readonly side: number
  readonly pitch: number
  readonly group: number
  readonly thickness: number
}

type Colours = Look['colours']

const coloured: Colours = { ink: '#20282b', soft: '#5b666a', accent: '#1d5c63', hairline: '#c4ccca' }
const black: Colours = { ink: '#000000', soft: '#000000', accent: '#000000', hairline: '#000000' }

interface Sizes {
  readonly text: number
  readonly label: number
  readonly stated: number
  readonly soft: number
  readonly small: number
  readonly code: number
  readonly cell: number
  readonly tiny: number
}

function stylesFrom(colours: Colours, sizes: Sizes): Look['styles'] {
  const text: Style = {
    face: 'text',
    size: sizes.text,
    colour: colours.ink,
    tabular: false,
    strike: false,
    href: null,
    accent: colours.accent,
  }
  return {
    text,
    label: { ...text, face: 'textBold', size: sizes.label },
    stated: { ...text, face: 'textBold', size: sizes.stated, colour: colours.accent },
    only: { ...text, face: 'textItalic', colour: colours.accent },
    soft: { ...text, size: sizes.soft, colour: colours.soft },
    small: { ...text, size: sizes.small, colour: colours.soft },
    code: { ...text, size: sizes.code, colour: colours.accent },
    cell: { ...text, size: sizes.cell, tabular: true },
    headCell: { ...text, face: 'textBold', size: sizes.cell, tabular: true },
    tiny: { ...text, size: sizes.tiny, colour: colours.soft, tabular: true },
  }
}

const everydayStyles = stylesFrom(coloured, {
  text: 10.5,
  label: 10,
  stated: 9.5,
  soft: 9.5,
  small: 8,
  code: 10,
  cell: 9.5,
  tiny: 7,
})

const title = { face: 'title' } as const

/** For most readers: small, with colours that keep their contrast. */
export const everyday: Look = {
  colours: coloured,
  styles: everydayStyles,
  leading: { text: 15.5, small: 13, foot: 12 },
  margin: { side: 58, top: 66, bottom: 70 },
  head: 34,
  foot: 48,
  gutter: 94,
  titles: [28, 22, 17],
  headings: {
    2: { role: 'H2', style: { ...everydayStyles.text, ...title, size: 16 }, leading: 21, gap: 26 },
    3: { role: 'H3', style: { ...everydayStyles.text, ...title, size: 12.5 }, leading: 17.5, gap: 18 },
    4: { role: 'H4', style: { ...everydayStyles.text, face: 'textBold' }, leading: 15.5, gap: 14 },
    5: { role: 'H5', style: { ...everydayStyles.text, face: 'textBoldItalic' }, leading: 15.5, gap: 12 },
    6: { role: 'H6', style: { ...everydayStyles.text, face: 'textBoldItalic' }, leading: 15.5, gap: 12 },
  },
  section: { role: 'H2', style: { ...everydayStyles.text, ...title, size: 11.5 }, leading: 15.5, gap: 16 },
  gaps: { paragraph: 7, item: 3, row: 6 },
  box: { side: 7.5, pitch: 11, group: 6, thickness: 0.6 },
  enlarged: 1,
  tightest: 7.5,
  coverBeside: { width: 168, height: 224 },
}

/** For a sheet of counts: as everyday, with narrow margins. */
export const compact: Look = {
  ...everyday,
  margin: { side: 46, top: 46, bottom: 64 },
  foot: 44,
}

const largeStyles = stylesFrom(black, {
  text: 18,
  label: 18,
  stated: 18,
  soft: 18,
  small: 18,
  code: 18,
  cell: 18,
  tiny: 18,
})

/** Large print: nothing below 18 points, black on white, one column. */
export const large: Look = {
  colours: black,
  styles: largeStyles,
  leading: { text: 26, small: 23, foot: 22 },
  margin: { side: 50, top: 72, bottom: 84 },
  head: 34,
  foot: 64,
  gutter: 0,
  titles: [34, 28, 24],
  headings: {
    2: { role: 'H2', style: { ...largeStyles.text, ...title, size: 26 }, leading: 34, gap: 34 },
    3: { role: 'H3', style: { ...largeStyles.text, ...title, size: 22 }, leading: 29, gap: 26 },
    4: { role: 'H4', style: { ...largeStyles.text, face: 'textBold', size: 20 }, leading: 27, gap: 22 },
    5: { role: 'H5', style: { ...largeStyles.text, face: 'textBold' }, leading: 26, gap: 20 },
    6: { role: 'H6', style: { ...largeStyles.text, face: 'textBold' }, leading: 26, gap: 20 },
  },
  section: { role: 'H2', style: { ...largeStyles.text, ...title, size: 22 }, leading: 29, gap: 24 },
  gaps: { paragraph: 12, item: 8, row: 16 },
  box: { side: 15, pitch: 21, group: 11, thickness: 1.2 },
  enlarged: 2,
  tightest: 18,
  coverBeside: null,
}
