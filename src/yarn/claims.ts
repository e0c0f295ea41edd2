/** What a draft's facts say outright: which pieces, and which rows of a piece, are worked in a yarn. */
export interface Claim {
  /** Position in the list of yarns. */
  readonly yarn: number
  readonly piece: string
  /** Null for all rows of the piece. */
  readonly rows: RowNumbers | null
}

/** `Rnds 1-4, 7`; with `every`, `Rows 3, 4 of every 4`, the same again each so many rows. */
export interface RowNumbers {
  readonly ranges: readonly (readonly [first: number, last: number])[]
  readonly every: number | null
}

const form =
  /^(?:(?:rows?|rnds?|rounds?|rds?)\.? ?)?(?<list>\d{1,4}(?: ?[-–] ?\d{1,4})?(?:(?:, ?| and | & )(?:and )?\d{1,4}(?: ?[-–] ?\d{1,4})?)*)(?: of every (?<every>\d{1,3}))?$/i

/** Reads which rows a yarn is claimed for; null where the words are none. */
export function readRowNumbers(text: string): RowNumbers | null {
  const { list, every } = form.exec(text.trim())?.groups ?? {}
  if (list === undefined || every === '0') return null
  const ranges = [...list.matchAll(/(\d+)(?: ?[-–] ?(\d+))?/g)].map(([, first, last]): readonly [number, number] => [
    Number(first),
    Number(last ?? first),
  ])
  return { ranges, every: every === undefined ? null : Number(every) }
}

function holds({ ranges, every }: RowNumbers, number: number): boolean {
  const own = every === null ? number : ((number - 1) % every) + 1
  return ranges.some(([first, last]) => first <= own && own <= last)
}

export function samePiece(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase()
}

/** The yarns that a row is claimed for, held together where there are several; none where the facts say nothing. */
export function claimedFor(claims: readonly Claim[], piece: string, number: number | null): readonly number[] {
  const own = claims.filter((claim) => samePiece(claim.piece, piece))
  const byRow = own.filter(({ rows }) => rows !== null && number !== null && holds(rows, number))
  return (byRow.length > 0 ? byRow : own.filter(({ rows }) => rows === null)).map(({ yarn }) => yarn)
}
