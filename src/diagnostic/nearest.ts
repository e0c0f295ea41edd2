/**
 * The known name nearest to a misspelt one, or undefined when none is near enough. Ties go to the
 * first in the alphabet, so that the answer is always the same.
 */
export function nearest(name: string, known: Iterable<string>): string | undefined {
  const wanted = name.toLowerCase()
  let best: { name: string; distance: number } | undefined
  for (const candidate of [...known].sort()) {
    const distance = editDistance(wanted, candidate.toLowerCase())
    if (distance <= allowed(wanted, candidate) && (best === undefined || distance < best.distance)) {
      best = { name: candidate, distance }
    }
  }
  return best?.name
}

/** A third of the letters may differ, and always one. */
function allowed(name: string, candidate: string): number {
  return Math.max(1, Math.floor(Math.max(name.length, candidate.length) / 3))
}

/** Insertions, deletions, changes and swaps of neighbours (optimal string alignment distance). */
function editDistance(a: string, b: string): number {
  let beforeLast: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, column) => column)
  for (let row = 1; row <= a.length; row++) {
    const current = [row]
    for (let column = 1; column <= b.length; column++) {
      const cost = a[row - 1] === b[column - 1] ? 0 : 1
      const swap =
        a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]
          ? (beforeLast[column - 2] ?? row + column) + 1
          : row + column
      current.push(
        Math.min((last[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1, (last[column - 1] ?? 0) + cost, swap),
      )
    }
    beforeLast = last
    last = current
  }
  return last[b.length] ?? a.length
}
