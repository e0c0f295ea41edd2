import type { Content } from './content.ts'
import type { ReadRow } from './cut.ts'
import type { Piece } from './piece.ts'
import type { Source, Step } from './step.ts'

const joins =
  /\b(?:re-?join|re-?attach|attach|join)(?:ing|ed)? (?:new |the |main |second |ball of )*(?:yarn|colou?r|thread|[abc]|mc|cc)\b|\brejoin\b/
const remains = /\b(?:unworked|unused|remaining|rem|held|skipped|left)\b/
const openings =
  /\b(?:underarms?|armholes?|thumb ?holes?|thumb opening|sleeve (?:sts?|stitches)|(?:skipped|held|reserved|parked) (?:\w+ )?(?:sts?|stitches|scs?|dcs?|hdcs?))\b/

function hasSource(steps: readonly Step[]): boolean {
  return steps.some(
    (step) =>
      step.kind === 'source' ||
      ((step.kind === 'sequence' || step.kind === 'repeat') && hasSource(step.body)) ||
      (step.kind === 'either' && step.options.some(hasSource)),
  )
}

/** Where a row may begin that joins yarn anew, as far as its words and the rows before tell; null for the row below. */
function sourceOf(row: ReadRow, piece: Piece): { readonly source: Source; readonly likely: boolean } | null {
  const text = row.words.map((word) => word.text).join(' ')
  const begins = text.slice(0, 160)
  if (row.opensSection && openings.test(text)) return { source: { kind: 'opening', from: 'chain' }, likely: true }
  if (!joins.test(begins) || !piece.resting.some((rest) => rest.size > 0)) return null
  return { source: { kind: 'unworked', row: null }, likely: row.opensSection || remains.test(begins) || piece.fastened }
}

/**
 * A row that goes back to stitches left unworked, or into an opening, without naming the row that they are in: the
 * second shoulder after the first, a sleeve after the yoke. What comes out tells where the words leave it open.
 */
export function goingBackTo(content: Content, row: ReadRow, piece: Piece): Content {
  if (content.kind !== 'steps' || hasSource(content.steps)) return content
  const found = sourceOf(row, piece)
  if (found === null) return content
  const at = content.steps[0]?.at ?? row.steps
  const source: Step = { kind: 'source', source: found.source, at }
  const options = found.likely ? [[source], []] : [[], [source]]
  return { kind: 'steps', steps: [{ kind: 'either', options, about: 'begins', at }, ...content.steps] }
}
