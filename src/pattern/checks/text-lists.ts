import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Ledger } from '../../rows/ledger.ts'
import { bodyNodes, type Draft, spanOf, textAt, walk } from '../draft.ts'

/** `60`, `31.5`, `20½`, `20 1/2`; a dash for a size to which it does not apply. */
const one = String.raw`(?:\d+(?:\.\d+|\s\d/\d|\s?[¼½¾⅓⅔⅛⅜⅝⅞])?|[–—-])`

/** `80 (90, 100, 110)`, also with `[120, 130]` behind it; with two values in brackets at least, for `4 (5)` may be anything. */
const list = new RegExp(
  String.raw`(?<![\w.,/#([-])${one}\s?\(\s*${one}(?:\s*,\s*${one})+\s*\)(?:\s?\[\s*${one}(?:\s*,\s*${one})*\s*\])?(?!\s?[([{]|\d)`,
  'gu',
)

/** What is said of some sizes has a value for each of these. */
const ofSomeSizes =
  /\bonly\b|\b(?:larger|largest|smaller|smallest|upper|lower|last|first|other|remaining) (?:\w+ )?sizes?\b/i

/** Lists of size columns in the text that have another length than the draft has sizes; those in rows are told as they are read. */
export function* textListFindings(draft: Draft, { written }: Ledger): Generator<Diagnostic> {
  const sizes = draft.facts.facts.sizes.length
  if (sizes < 2) return
  for (const node of walk(bodyNodes(draft).filter(({ type }) => type !== 'containerDirective'))) {
    if (node.type !== 'paragraph') continue
    const at = spanOf(draft, node)
    const text = textAt(draft, at)
    if (ofSomeSizes.test(text) || written.some((row) => row.at.start < at.end && at.start < row.at.end)) continue
    for (const { 0: words, index } of text.matchAll(list)) {
      const given = words.split(/[(,[]/).length
      const start = at.start + index
      if (given !== sizes) yield diagnose('text-list-length', { start, end: start + words.length }, { given, sizes })
    }
  }
}
