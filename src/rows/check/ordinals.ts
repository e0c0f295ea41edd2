import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { RowText } from './source.ts'
import { spanOf } from './source.ts'

const ordinals = /(?<![\w.,])(\d{1,3})(st|nd|rd|th)\b/gi
/** `3st` may be three stitches, unless what follows is counted by ordinals. */
const afterOrdinal = /^\s*(?:rows?|rnds?|rounds?|ch|chs|chain|chains|sps?|space|and|to|[–-])\b/i

function endingOf(number: number): string {
  const teen = number % 100 > 10 && number % 100 < 14
  return (teen ? undefined : ['th', 'st', 'nd', 'rd'][number % 10]) ?? 'th'
}

/** `2th row`: a digit that has slipped shows in the ending beside it. */
export function ordinalFindings(row: RowText): readonly Diagnostic[] {
  return [...row.text.matchAll(ordinals)].flatMap((match) => {
    const [words, digits = '', ending = ''] = match
    const right = endingOf(Number(digits))
    if (ending.toLowerCase() === right) return []
    const rest = row.text.slice(match.index + words.length)
    if (ending.toLowerCase() === 'st' && !afterOrdinal.test(rest)) return []
    return [diagnose('ordinal-ending', spanOf(row, match), { words, instead: `${digits}${right}` })]
  })
}
