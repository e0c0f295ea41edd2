import type { Count } from '../count.ts'
import type { Reader } from '../reader.ts'
import { attempt, numberAt, peek, take, takeNumber, textAt } from '../reader.ts'

const centimetresIn: Readonly<Record<string, number>> = {
  mm: 0.1,
  cm: 1,
  cms: 1,
  m: 100,
  in: 2.54,
  ins: 2.54,
  inch: 2.54,
  inches: 2.54,
  '"': 2.54,
  '”': 2.54,
}
const fractions: Readonly<Record<string, number>> = {
  '½': 0.5,
  '¼': 0.25,
  '¾': 0.75,
  '⅛': 0.125,
  '⅜': 0.375,
  '⅝': 0.625,
  '⅞': 0.875,
}

/** `31 cm`, `12½ in`, `12 1/2 in`, a placeholder that is a length */
export function readLength(reader: Reader): Count | null {
  const word = peek(reader)
  if (word?.kind === 'length') {
    reader.at += 1
    return word.centimetres
  }
  if (word?.kind !== 'number') return null
  const values = attempt(reader, listedLengths) ?? plainLength(reader)
  const unit = centimetresIn[textAt(reader)]
  if (values === null || unit === undefined) return null
  reader.at += 1
  passOtherSystem(reader)
  return values.map((value) => (value === null ? null : value * unit))
}

/** `14½`, `22 (24)` */
function plainLength(reader: Reader): Count | null {
  const word = peek(reader)
  if (word?.kind !== 'number') return null
  reader.at += 1
  const part = fraction(reader)
  return word.count.map((value) => (value === null ? null : value + part))
}

/** `14 (14, 14½, 15)`: with a fraction in it a list is no list of counts. */
function listedLengths(reader: Reader): Count | null {
  const values = [plainLength(reader)?.[0] ?? null]
  if (!take(reader, '(', '[')) return null
  do values.push(plainLength(reader)?.[0] ?? null)
  while (take(reader, ',', ':', '/'))
  if (!take(reader, ')', ']') || values.includes(null)) return null
  return values.length === reader.vocabulary.sizes ? values : null
}

/** `[76 cm]`, `(12 in)`, `/ 30 cm`: the same length once more. */
function passOtherSystem(reader: Reader): void {
  const close = /^[([]$/.test(textAt(reader)) ? reader.closing.get(reader.at) : undefined
  const inside = close === undefined ? [] : reader.words.slice(reader.at + 1, close)
  if (close !== undefined && inside.some((word) => centimetresIn[word.text] !== undefined)) reader.at = close + 1
  else if (textAt(reader) === '/' && numberAt(reader, 1) !== null) reader.at += 3
}

function fraction(reader: Reader): number {
  const sign = fractions[textAt(reader)] ?? 0
  if (sign > 0) reader.at += 1
  if (sign > 0) return sign
  const written = attempt(reader, (inner) => {
    take(inner, '-')
    const over = takeNumber(inner)?.[0] ?? null
    const under = take(inner, '/') ? (takeNumber(inner)?.[0] ?? null) : null
    return over === null || under === null || under === 0 ? null : over / under
  })
  return written ?? 0
}
