/** Part of a word at one height. */
export interface Piece {
  readonly text: string
  readonly scale: number
  readonly rise: number
  /** The next piece moves in under or over this one. */
  readonly tuck: boolean
  /** The fraction that begins here, as it is read and copied; '' where it goes on, null outside of one. */
  readonly reads: string | null
}

const plain = { scale: 1, rise: 0, tuck: false, reads: null } as const
const numerator = { scale: 0.6, rise: 0.28, tuck: true } as const
const slash = { text: '\u2044', scale: 1, rise: 0, tuck: true, reads: '' } as const
const denominator = { scale: 0.6, rise: 0, tuck: false, reads: '' } as const

/** Numerator and denominator of a fraction that is one character, such as `⅜`; null for any other character. */
export function fractionParts(character: string): readonly [numerator: string, denominator: string] | null {
  const [, over, under] = /^(\d+)\u2044(\d+)$/.exec(character.normalize('NFKD')) ?? []
  return over === undefined || under === undefined ? null : [over, under]
}

/**
 * Builds fractions that no face has from small figures and a fraction slash. After a whole number stands
 * a thin space, lest `9⅛` be taken for `91⁄8` where only its figures are read.
 */
export function splitFractions(text: string, covered: (character: string) => boolean): readonly Piece[] {
  const pieces: Piece[] = []
  for (const part of text.split(/([\u00bc-\u00be\u2150-\u215e])/)) {
    const fraction = part.length === 1 && !covered(part) ? fractionParts(part) : null
    if (part === '') continue
    if (fraction === null) {
      pieces.push({ text: part, ...plain })
      continue
    }
    const afterNumber = /\d$/.test(pieces.at(-1)?.text ?? '')
    pieces.push({ text: `${afterNumber ? '\u2009' : ''}${fraction[0]}`, ...numerator, reads: part })
    pieces.push(slash, { text: fraction[1], ...denominator })
  }
  return pieces
}
