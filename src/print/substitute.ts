import { fractionParts } from './fraction.ts'

/** Plain writing for signs that no face has. */
const substitutes: Readonly<Record<string, string>> = {
  '\u2010': '-',
  '\u2011': '-',
  '→': '->',
  '←': '<-',
  '↔': '<->',
  '⇒': '=>',
  '≥': '>=',
  '≤': '<=',
  '≈': '~',
  '≠': '!=',
  '\u202f': '\u00a0',
  '\u2007': '\u00a0',
}

/** Joiners, variation selectors and control characters: seen only in their effect on others. */
const invisible = /^(?:\p{Cc}|\p{Cf}|\p{Zl}|\p{Zp}|\p{Variation_Selector})$/u

/** Their words run the other way, which lines are not set for, even where a face of signs has the single letters. */
const rightToLeft = /\p{Script=Arabic}|\p{Script=Hebrew}|\p{Script=Syriac}|\p{Script=Thaana}|\p{Script=Nko}/u

/**
 * What is printed for a character: itself, nothing where it is never seen, plain writing where no face has it
 * (`①` as `1`, `℃` as `°C`, `→` as `->`); null where there is none either.
 */
export function shownAs(character: string, covered: (character: string) => boolean): string | null {
  if (character === '\t') return '\u00a0'
  if (invisible.test(character)) return ''
  if (rightToLeft.test(character)) return null
  if (covered(character)) return character
  const writing = substitutes[character] ?? character.normalize('NFKC')
  return writing !== character && [...writing].every(covered) ? writing : null
}

/** Whether a character comes out in print in one way or another, fractions built of small figures too. */
export function isPrinted(character: string, covered: (character: string) => boolean): boolean {
  return shownAs(character, covered) !== null || fractionParts(character) !== null
}
