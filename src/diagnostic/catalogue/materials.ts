import { entry } from '../entry.ts'

/** A published range; null at an end that is open. */
export interface Range {
  readonly min: number | null
  readonly max: number | null
}

function rangeWords({ min, max }: Range, unit = ''): string {
  if (min === null) return `up to ${max}${unit}`
  return max === null ? `from ${min}${unit}` : `${min} to ${max}${unit}`
}

const guideline =
  'The table is a guideline, and the gauge rules: check hook, gauge and category, and keep them if you like the fabric.'

/** Findings about hooks and yarn against what is published of them. */
export const materialFindings = {
  'hook-sizes-disagree': entry<{ words: string; us: string; mm: string; ofName: string; ofMm: string | null }>({
    severity: 'warning',
    says: ({ words, us, mm, ofName, ofMm }) =>
      `“${words}” are two hooks: ${us} is ${ofName}${ofMm === null ? '' : `, and ${mm} mm is ${ofMm}`}.`,
    hint: () => 'Write the one that you used. Millimetres decide: letters differ by maker.',
  }),
  'yarn-category-disagrees': entry<{ words: string; name: string; number: number; ofName: string; ofNumber: string }>({
    severity: 'warning',
    says: ({ words, name, number, ofName, ofNumber }) =>
      `“${words}” are two yarns: “${name}” is category ${ofName}, and category ${number} is ${ofNumber}.`,
    hint: ({ ofName }) => `Write the category of the yarn that you used, such as \`category: ${ofName}\`.`,
  }),
  'gauge-outside-category': entry<{ gauge: string; over: string; stitch: string; category: string; range: Range }>({
    severity: 'note',
    says: ({ gauge, over, stitch, category, range }) =>
      `${gauge} stitches in ${over} are outside of what is published for ${category}: ${rangeWords(range)} in ${stitch}.`,
    hint: () => guideline,
  }),
  'hook-outside-category': entry<{ hook: string; category: string; range: Range }>({
    severity: 'note',
    says: ({ hook, category, range }) =>
      `A hook of ${hook} is outside of what is published for ${category}: ${rangeWords(range, ' mm')}.`,
    hint: () => guideline,
  }),
} as const
