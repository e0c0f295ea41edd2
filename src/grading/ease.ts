import Fraction from 'fraction.js'
import type { EaseFound } from '../formula/index.ts'
import { toBase } from '../measure/index.ts'
import { easeClasses } from '../standards/ease.ts'

/**
 * The ease of a fit by its published name, `classic`, `very close fit`: the middle of its range, or the least where the
 * range has no upper end (`oversized`). Centimetres, reckoned from the inches as published.
 */
export function easeOf(fit: string, unit: 'cm' | 'in'): EaseFound {
  const wanted = plain(fit)
  const found = easeClasses.find(({ name, aliases }) => [name, ...aliases].includes(wanted))
  if (found === undefined) return { kind: 'unknown', known: easeClasses.map(({ name }) => name) }
  const [low, high] = found.inches
  return { kind: 'found', length: toBase(new Fraction(low + (high ?? low)).div(2), 'in'), unit }
}

/** `Very-close fitting` as `very close`. */
function plain(fit: string): string {
  return fit
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .replace(/ fit(?:ting|ted)?$/, '')
}
