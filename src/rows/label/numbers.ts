import type { Count } from '../count.ts'
import type { Cursor } from './cursor.ts'
import { numberAt, styleOf, takeText, textAt } from './cursor.ts'

/** Which rows a label stands for. */
export type Numbers =
  /** One entry a row; null for a size that has no such row. */
  | { readonly kind: 'list'; readonly items: readonly Count[] }
  /** `Next row`, `Next 5 rows`, `Dec row` */
  | { readonly kind: 'next'; readonly count: Count | null }
  /** `8–2`: it ends before it begins, for every size. */
  | { readonly kind: 'backwards'; readonly from: Count }
  /** `2nd and every even row`, `All WS rows`: rows in between others; `first` null for the first there is. */
  | { readonly kind: 'every'; readonly first: number | null; readonly of: 'even' | 'odd' | 'RS' | 'WS' | 'other' }
  | { readonly kind: 'none' }

/** A range longer than this is a slip of the pen. */
export const longestRange = 2_000

/** Every number from one to the other, size by size; a size whose range is shorter has null at the end. */
function range(from: Count, to: Count): readonly Count[] {
  const lengths = from.map((start, size) => {
    const end = to[size] ?? null
    return start === null || end === null ? 0 : Math.max(0, end - start + 1)
  })
  const longest = Math.min(Math.max(0, ...lengths), longestRange + 1)
  return Array.from({ length: longest }, (_, index) =>
    from.map((start, size) => (start !== null && index < (lengths[size] ?? 0) ? start + index : null)),
  )
}

/** What may follow the last number of a label. */
const labelEnds = /^(?:|[-:.)=,(*[/–]|=>|and|rs|ws|incl|inclusive|of|for|only|through|thru|to)$/

/** A second number after a mark or word that joins; null where what follows is no number of a row: `R1 – 6 sc`. */
function furtherNumber(cursor: Cursor, ordinal: boolean, spaced: boolean): Count | null {
  const named = styleOf(textAt(cursor)) !== null || textAt(cursor) === 'r'
  if (named) cursor.at += 1
  const next = numberAt(cursor, ordinal) ?? (ordinal ? null : numberAt(cursor, true))
  if (next === null) return null
  // `Row 2—Two dc in each`: a range is written in figures.
  const figures = /^\d/.test(textAt(cursor))
  cursor.at += 1
  const after = textAt(cursor)
  return named || (!spaced && figures) || labelEnds.test(after) || styleOf(after) !== null ? next : null
}

function listed(cursor: Cursor, ordinal: boolean, first: Count): readonly Count[] {
  cursor.at += 1
  const items: Count[] = [first]
  for (;;) {
    const before = cursor.at
    // `5. – 6.`, but not `Round 5.—6 dc`
    if (textAt(cursor) === '.' && /^[-–]$/.test(textAt(cursor, 1)) && /^[.:)]$/.test(textAt(cursor, 3))) cursor.at += 1
    const glued = cursor.words[cursor.at]?.glued === true
    const ranges = takeText(cursor, '-', '–', '~', 'to', 'through', 'thru')
    const joins = !ranges && takeText(cursor, 'and', ',', '+')
    if (joins) takeText(cursor, 'and')
    const next = ranges || joins ? furtherNumber(cursor, ordinal, joins || !glued) : null
    if (next === null) {
      cursor.at = before
      return items
    }
    if (ranges) items.push(...range(items.pop() ?? first, next))
    else items.push(next)
  }
}

/** `7` `5–18` `R5–R8` `8 and 9` `2, 4 and 6`; ordinals likewise. */
export function readNumbers(cursor: Cursor, ordinal: boolean): Numbers | null {
  const first = numberAt(cursor, ordinal)
  if (first === null) return null
  const items = listed(cursor, ordinal, first)
  return items.length === 0 ? { kind: 'backwards', from: first } : { kind: 'list', items }
}
