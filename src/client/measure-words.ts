import type { OwnMeasure } from './fit.ts'

const quarters = ['', '¼', '½', '¾'] as const

/** A length as patterns print it: `98.5 cm`, `38½ in`, to half a centimetre or a quarter of an inch. */
export function lengthWords(amount: number, unit: OwnMeasure['unit']): string {
  return `${numberWords(amount, unit)} ${unit}`
}

/** `91.5–96.5 cm`; one number where both ends are the same. */
export function rangeWords(low: number, high: number, unit: OwnMeasure['unit']): string {
  const from = numberWords(low, unit)
  const to = numberWords(high, unit)
  return from === to ? `${from} ${unit}` : `${from}–${to} ${unit}`
}

function numberWords(amount: number, unit: OwnMeasure['unit']): string {
  if (unit === 'cm') return String(Math.round(amount * 2) / 2)
  const inQuarters = Math.round(amount * 4)
  const whole = Math.floor(inQuarters / 4)
  const part = quarters[inQuarters % 4] ?? ''
  return whole === 0 && part !== '' ? part : `${whole}${part}`
}
