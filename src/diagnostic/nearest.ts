/**
 * The candidate that a slip of the pen may have meant: fewest changed letters, at most a third of the
 * word; ties go to the first in the order of the alphabet. Null when nothing is near.
 */
export function nearestTo(word: string, candidates: Iterable<string>): string | null {
  const wanted = plain(word)
  let best: string | null = null
  let least = Math.max(1, Math.floor(wanted.length / 3)) + 1
  for (const candidate of [...candidates].sort()) {
    const distance = distanceBetween(wanted, plain(candidate), least)
    if (distance < least) {
      best = candidate
      least = distance
    }
  }
  return best
}

/** Words longer than this are not compared: no name is so long by intention. */
const longest = 60

function plain(word: string): string {
  return word.toLowerCase().replace(/[\s-]+/g, '_')
}

/** Letters to change, add, leave out or swap with a neighbour; `limit` when there are that many or more. */
function distanceBetween(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) >= limit || a.length > longest || b.length > longest) return limit
  let beforeLast: readonly number[] = []
  let last: readonly number[] = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i += 1) {
    const row = nextRow(a, b, i, last, beforeLast)
    beforeLast = last
    last = row
  }
  return Math.min(last[b.length] ?? limit, limit)
}

function nextRow(a: string, b: string, i: number, last: readonly number[], beforeLast: readonly number[]): number[] {
  const row = [i]
  for (let j = 1; j <= b.length; j += 1) {
    const change = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1)
    const add = (row[j - 1] ?? 0) + 1
    const leaveOut = (last[j] ?? 0) + 1
    const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]
    row.push(Math.min(change, add, leaveOut, swapped ? (beforeLast[j - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY))
  }
  return row
}
