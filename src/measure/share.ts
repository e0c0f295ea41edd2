/**
 * One part of a whole number that is divided as fairly as whole numbers allow: every part is the quotient, rounded
 * down or up, and the larger ones lie as far apart as they can. `which` counts from 1; the parts add up to `total`.
 */
export function shareOf(total: number, parts: number, which: number): number {
  return endOfShare(total, parts, which) - endOfShare(total, parts, which - 1)
}

/** The sum of the first parts: the exact point rounded to a whole number, a tie up. */
function endOfShare(total: number, parts: number, which: number): number {
  return Math.floor((2 * total * which + parts) / (2 * parts))
}
