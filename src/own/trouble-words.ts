import type { Diagnostic } from '../diagnostic/index.ts'
import type { Pattern } from '../pattern/pattern.ts'

/** What was found, in words for a reader: which row, and which number. */
export function troubleWords({ at, message, code }: Diagnostic, { rows }: Pattern): string {
  const said =
    code === 'need-failed' ? needWords(message) : message.replace(/`([^`]*)`/g, (_, quoted: string) => `“${quoted}”`)
  const row = rows.find((each) => each.at.start <= at.start && at.start < each.at.end)
  // Most of what is found in a row names it.
  if (row === undefined || row.label === null || /^(?:\p{L}+ )?\p{L}+ \d/u.test(said)) return said
  return `${row.label} of ${row.piece.replace(/ \(make .*\)$/, '')}: ${said}`
}

const comparisons: readonly (readonly [sign: string, words: string])[] = [
  ['>=', 'is at least'],
  ['<=', 'is at most'],
  ['!=', 'is not'],
  ['>', 'is more than'],
  ['<', 'is less than'],
  ['=', 'is'],
]

/** `need sleeve_width >= body("upper_arm") + 7 cm` as a sentence: the names are the designer's own. */
function needWords(message: string): string {
  const [, need = '', cases = ''] = /^`need (.*)` does not hold \((.*)\)\.$/s.exec(message) ?? []
  if (need === '') return message
  let words = need.replace(/\w+\("([^"]*)"\)/g, 'the $1').replaceAll('_', ' ')
  for (const [sign, said] of comparisons) words = words.replaceAll(` ${sign} `, ` ${said} `)
  return `The pattern comes out where ${words}, and that is not so with these numbers: ${cases}.`
}
