import type { OwnMeasure } from '../fit.ts'
import { lengthWords, rangeWords } from '../measure-words.ts'
import { type Field, inUnit, lengthLimits, type Refusal, rateLimits } from './given.ts'

/** The unit that the page shows, and the position of the size that it shows; null where it shows all. */
export interface Shown {
  readonly unit: OwnMeasure['unit']
  readonly size: number | null
}

/** `Depth, in cm`, `Stitches over 10 cm (4 in) of your swatch` */
export function labelOf(field: Field, unit: OwnMeasure['unit']): string {
  if (field.kind === 'length') return `${field.of.label}, in ${unit === 'cm' ? 'cm' : 'inches'}`
  const over = field.of[field.what]?.over.map(({ text }) => text).join('') ?? ''
  const whose = field.of.name === '' ? '' : `${field.of.name}: `
  return `${whose}${field.what} over ${over} of your swatch`.replace(/^./, (letter) => letter.toUpperCase())
}

/** `16–36 cm. As published: 26 cm.` */
export function hintOf(field: Field, { unit, size }: Shown): string {
  if (field.kind === 'rate') {
    const [least, most] = rateLimits(field)
    return `${least}–${most}. As published: ${Math.round(field.count * 10) / 10}.`
  }
  const all = field.of.bySize.filter((_, position) => size === null || position === size)
  const lengths = all.flatMap((cell) => (cell === null ? [] : [inUnit(cell, unit)]))
  const range = rangeWords(...lengthLimits(field, unit), unit)
  if (lengths.length === 0) return `${range}. This size has no such length.`
  const published = rangeWords(Math.min(...lengths), Math.max(...lengths), unit)
  return `${range}. As published: ${published}${published.includes('–') ? ', by size' : ''}.`
}

export function refusalWords(field: Field, refusal: Refusal, unit: OwnMeasure['unit']): string {
  if (field.kind === 'length') {
    if (refusal === 'unreadable')
      return `Please give a length above 0, such as ${unit === 'cm' ? '30 or 30.5' : '11 or 11½'}.`
    const [least, most] = lengthLimits(field, unit).map((limit) => lengthWords(limit, unit))
    return `${field.of.label} can be from ${least} to ${most}.`
  }
  const [least, most] = rateLimits(field)
  return refusal === 'unreadable'
    ? 'Please give a number above 0, such as 12 or 12.5.'
    : `The pattern is made for ${least} to ${most} ${field.what} here. Try another hook, and measure again.`
}
