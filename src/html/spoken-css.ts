import type { Pattern, Reading } from '../pattern/pattern.ts'
import { readingClass, termClass } from './sizes.ts'

/**
 * What is heard and not seen, as a style sheet of the pattern's own: abbreviations in full, and after each number of
 * several the size that it is for. Generated content is read by screen readers, and is in no text that is copied,
 * searched or saved.
 */
export function spokenCss({ readings, sizes }: Pattern): string {
  return [...readings.flatMap(readingRules), ...sizeRules(sizes)].map((rule) => `${rule}\n`).join('')
}

/** A short address for what the style sheet says: another one when it says something else. */
export function spokenVersion(pattern: Pattern): string {
  let sum = 0
  for (const letter of spokenCss(pattern)) sum = (Math.imul(sum, 31) + (letter.codePointAt(0) ?? 0)) | 0
  return (sum >>> 0).toString(36)
}

function readingRules({ own, other, explains }: Reading, place: number): readonly string[] {
  const word = `.${readingClass(place)}${explains ? ':focus' : ''}::after`
  const rule = (selector: string, text: string): string => `${selector}{content:${quoted(text)}}`
  return own === other ? [rule(word, own)] : [rule(word, own), rule(`.${termClass('other')}${word}`, other)]
}

/** `60 for Child, 72 for Adult S`, while all sizes are in view. */
function sizeRules(sizes: readonly string[]): readonly string[] {
  if (sizes.length < 2) return []
  return sizes.map((name, size) => {
    const after = size < sizes.length - 1 ? ', ' : ''
    return `:root:has(#size-all:checked) span.s.s${size}::after{content:${quoted(` for ${name}${after}`)}}`
  })
}

function quoted(text: string): string {
  return `"${text.replace(/\s+/g, ' ').replace(/[\\"]/g, '\\$&')}"`
}
