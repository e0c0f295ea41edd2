import type { Fit } from '../pattern/pattern.ts'
import { easeFor, type Found, type OwnMeasure } from './fit.ts'
import { lengthWords, rangeWords } from './measure-words.ts'

/** What a reader is told about one of the sizes found: how it fits, and what it is made for. `names` are those of the sizes. */
export function fitWords(fit: Fit, names: readonly string[], found: Found, size: number, own: OwnMeasure): string {
  const name = names[size] ?? ''
  const fits = `${name}${easeWords(easeFor(fit, size, own), own.unit)}`
  return [lead(found, names), fits, madeFor(fit, size, own.unit)].filter((part) => part !== '').join(' ')
}

function lead({ lies, sizes }: Found, names: readonly string[]): string {
  const [smaller = '', larger = ''] = sizes.toSorted((a, b) => a - b).map((size) => names[size] ?? '')
  const leads: Readonly<Record<Found['lies'], string>> = {
    within: '',
    between: `You are between ${smaller} and ${larger}.`,
    below: 'That is less than the smallest size is made for.',
    above: 'That is more than the largest size is made for.',
  }
  return leads[lies]
}

/** ` has 8 cm of ease.` */
function easeWords(ease: number | null, unit: OwnMeasure['unit']): string {
  if (ease === null) return ' is yours.'
  const amount = lengthWords(Math.abs(ease), unit)
  if (/^0 /.test(amount)) return ' has no ease: it is as wide as you.'
  return ease > 0
    ? ` has ${amount} of ease: it is wider than you.`
    : ` has ${amount} of negative ease: it stretches to fit.`
}

/** `It is made for a bust of 91.5–96.5 cm and measures 106 cm.` */
function madeFor(fit: Fit, size: number, unit: OwnMeasure['unit']): string {
  const low = fit.low[unit][size] ?? 0
  const high = fit.high[unit][size] ?? 0
  const made = fit.made?.[unit][size] ?? null
  const body = `It is made for a ${fit.label.toLowerCase()} of ${rangeWords(low, high, unit)}`
  return made === null ? `${body}.` : `${body} and measures ${lengthWords(made, unit)}.`
}
