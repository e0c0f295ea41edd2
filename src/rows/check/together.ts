import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { RowText } from './source.ts'
import { spanOf } from './source.ts'

const over = /\b[a-z]+(\d)tog over (?:the )?(?:next|first|last)? ?(\d+)(?! ?[([,]? ?\d)(?![^,;.]{0,25}\band\b)/gi

/** `dc2tog over next 1 st`: fewer stitches than are worked together. */
export function togetherFindings(row: RowText): readonly Diagnostic[] {
  return [...row.text.matchAll(over)].flatMap((match) => {
    const [words, together, stitches] = [match[0], Number(match[1]), Number(match[2])]
    return stitches >= together ? [] : [diagnose('together-over', spanOf(row, match), { words, together, stitches })]
  })
}
