import type { Source } from './source.ts'

/** How much wider than the body a garment is, by the name of its fit. Inches as published; null: no upper end. */
export interface EaseClass {
  readonly name: string
  /** Other names of the trade for it. */
  readonly aliases: readonly string[]
  readonly inches: readonly [low: number, high: number | null]
  /** `seen` or `from memory`. */
  readonly how: string
  readonly note?: string
}

export const easeSource: Source = {
  publisher: 'Craft Yarn Council',
  title: 'Fit and ease chart',
  edition: 'handbook 2018 and web (five classes with negative, zero and positive ease)',
  url: 'https://www.craftyarncouncil.com/standards/body-sizing',
  how: 'seen',
  note: 'Ease is the finished bust or chest less that of the body. The five classes and the sign of their ease were seen in a summary of a 2021 handbook extract, 2 to 4 in of classic ease twice; the other numbers are from memory. The chart does not name what lies between very close and close, nor between close and classic.',
}

export const easeClasses: readonly EaseClass[] = [
  { name: 'very close', aliases: [], inches: [-4, -2], how: 'from memory', note: 'The fabric stretches.' },
  { name: 'close', aliases: [], inches: [0, 0], how: 'seen', note: 'The body’s own measure.' },
  { name: 'classic', aliases: ['standard'], inches: [2, 4], how: 'seen' },
  {
    name: 'loose',
    aliases: [],
    inches: [4, 6],
    how: 'from memory',
    note: 'The same as in the older list, which was seen (Lion Brand, quoted 2011).',
  },
  {
    name: 'oversized',
    aliases: [],
    inches: [6, null],
    how: 'from memory',
    note: 'The same as in the older list, which was seen (Lion Brand, quoted 2011).',
  },
]
