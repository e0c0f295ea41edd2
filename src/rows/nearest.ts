/** Words of the trade that are no stitches: what a word that can't be read may have been meant to be. */
export const trade = (
  'st sts chs sps lps rnds top side sides edge edges end ends work with right wrong left facing center centre middle skipped ' +
  'across around center chain chains corner each every fasten finish first group increase decrease join last loop magic ' +
  'next over place repeat ring round rows same skip space spaces stitch stitches times together turn until work working'
).split(' ')

/** Words that are right as they stand, though one of the trade is near. */
const ordinary = new Set(
  (
    'and the for from form then than that this with into onto over under along after before but not now one two row rnd ' +
    'rounds rnds loops groups corners petals holes size sizes tch dec inc tip stop step ear box top back front base have here ' +
    'only also both same some more most less leave like last least long left let lay side tide cord card core hand head neck'
  ).split(' '),
)

const longest = 20

/** How many letters must be put in, left out, changed or swapped to make one word of another, up to `most`. */
function distance(from: string, to: string, most: number): number {
  if (Math.abs(from.length - to.length) > most) return most + 1
  let before: number[] = []
  let row = Array.from({ length: to.length + 1 }, (_, at) => at)
  for (let at = 1; at <= from.length; at += 1) {
    const next = [at]
    for (let other = 1; other <= to.length; other += 1) {
      const same = from[at - 1] === to[other - 1]
      const swapped = from[at - 1] === to[other - 2] && from[at - 2] === to[other - 1]
      const changed = (row[other - 1] ?? 0) + (same ? 0 : 1)
      const parted = Math.min((row[other] ?? 0) + 1, (next[other - 1] ?? 0) + 1)
      next.push(Math.min(changed, parted, swapped && at > 1 ? (before[other - 2] ?? 0) + 1 : most + 1))
    }
    before = row
    row = next
  }
  return row[to.length] ?? most + 1
}

function nearestTo(word: string, names: readonly string[]): string | null {
  const most = word.length < 6 ? 1 : 2
  let found: string | null = null
  let least = most + 1
  for (const name of names) {
    const by = distance(word, name, most)
    if (by < least) {
      least = by
      found = name
    }
  }
  return found
}

/**
 * The first of some words that is close to a known one.
 *
 * @param words in lower case
 * @param known other words that a row may hold, in lower case
 * @returns null where every word is known, or none is close to one
 */
export function misspelt(
  words: readonly string[],
  known: Iterable<string>,
): { readonly word: string; readonly meant: string } | null {
  const names = [...known, ...trade].filter((name) => name.length > 2 && !name.includes(' '))
  const all = new Set(names)
  for (const word of words) {
    if (word.length < 3 || word.length > longest || !/^[\p{L}'-]+$/u.test(word) || all.has(word)) continue
    if (ordinary.has(word)) continue
    const meant = nearestTo(word, names)
    if (meant !== null) return { word, meant }
  }
  return null
}
