/**
 * Counts by key that can be taken back to an earlier moment: a repetition that does not fit must leave
 * no trace. What each change replaced is kept, so that going on costs nothing but the change itself.
 */
export interface Tally {
  readonly counts: Map<string, number>
  /** The latest change last; `count` undefined where the key was new. */
  readonly replaced: { readonly key: string; readonly count: number | undefined }[]
}

export function createTally(): Tally {
  return { counts: new Map(), replaced: [] }
}

/** What is noted here takes yarn and is in no count: a foundation in a row of its own stitches, a special stitch worked as one. */
export function besidesKey(key: string): string {
  return `${besides}${key}`
}

const besides = 'besides:'

/** The key that `besidesKey` was given; null for any other. */
export function besidesOf(key: string): string | null {
  return key.startsWith(besides) ? key.slice(besides.length) : null
}

export function add(tally: Tally, key: string, by: number): void {
  const count = tally.counts.get(key)
  tally.replaced.push({ key, count })
  tally.counts.set(key, (count ?? 0) + by)
}

/** Back to the moment when there had been this many changes. */
export function takeBack(tally: Tally, changes: number): void {
  while (tally.replaced.length > changes) {
    const last = tally.replaced.pop()
    if (last?.count !== undefined) tally.counts.set(last.key, last.count)
    else if (last !== undefined) tally.counts.delete(last.key)
  }
}
