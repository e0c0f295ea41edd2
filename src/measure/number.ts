import Fraction from 'fraction.js'

/** Fractions that have a character of their own, as printed on tape measures and in patterns. */
export const glyphs: ReadonlyMap<string, string> = new Map([
  ['1/2', '½'],
  ['1/4', '¼'],
  ['3/4', '¾'],
  ['1/8', '⅛'],
  ['3/8', '⅜'],
  ['5/8', '⅝'],
  ['7/8', '⅞'],
])

const ofGlyph = new Map([...glyphs].map(([ratio, glyph]) => [glyph, ratio]))

/** A number in one piece as a designer types it: `12`, `6.5`, `.5`, `½`, `20½`. */
export const numberPattern = /(?:\d+(?:\.\d+)?[½¼¾⅛⅜⅝⅞]?|\.\d+|[½¼¾⅛⅜⅝⅞])/

const written = new RegExp(`^(${numberPattern.source})$`)
const ratio = /^(?:(\d+)\s+)?(\d+)\s*\/\s*(\d+)$/

/** More digits than any measure has; longer numbers would only slow the reckoning down. */
const mostCharacters = 24

/**
 * Reads a number as a designer types it, exactly: `12`, `6.5`, `20½`, `1/2`, `20 1/2`.
 * Null when it is not a number, has a zero below the line, or is longer than 24 characters.
 */
export function readNumber(text: string): Fraction | null {
  const trimmed = text.trim()
  if (trimmed.length > mostCharacters) return null
  return readRatio(trimmed) ?? readPlain(trimmed)
}

function readPlain(text: string): Fraction | null {
  if (!written.test(text)) return null
  const last = text.slice(-1)
  const part = ofGlyph.get(last)
  if (part === undefined) return new Fraction(text.startsWith('.') ? `0${text}` : text)
  const whole = text.slice(0, -1)
  return new Fraction(part).add(whole === '' ? 0 : whole)
}

function readRatio(text: string): Fraction | null {
  const match = ratio.exec(text)
  if (match === null) return null
  const below = BigInt(match[3] ?? '0')
  if (below === 0n) return null
  return new Fraction(BigInt(match[2] ?? '0'), below).add(match[1] ?? 0)
}

/**
 * A number with at most `places` decimals, a half away from zero, without needless zeros: `2.4`, `0.33`, `−3`.
 * The minus sign is the typographic one.
 */
export function printDecimal(value: Fraction, places: number): string {
  if (value.d === 1n) return value.s < 0n && value.n !== 0n ? `−${value.n}` : `${value.n}`
  const scale = 10n ** BigInt(places)
  const scaled = roundedQuotient(value.n * scale, value.d)
  const whole = scaled / scale
  const rest = (scaled % scale).toString().padStart(places, '0').replace(/0+$/, '')
  const digits = places === 0 || rest === '' ? `${whole}` : `${whole}.${rest}`
  return value.s < 0n && scaled !== 0n ? `−${digits}` : digits
}

/** A number with its fraction as a character where there is one: `9½`, `¾`, `9 1/16`. */
export function printMixed(value: Fraction): string {
  const size = value.abs()
  const whole = size.n / size.d
  const above = size.n % size.d
  const sign = value.s < 0n ? '−' : ''
  if (above === 0n) return `${sign}${whole}`
  const part = `${above}/${size.d}`
  const glyph = glyphs.get(part)
  if (whole === 0n) return `${sign}${glyph ?? part}`
  return glyph === undefined ? `${sign}${whole} ${part}` : `${sign}${whole}${glyph}`
}

function roundedQuotient(above: bigint, below: bigint): bigint {
  return (2n * above + below) / (2n * below)
}
