import { everySize } from '../count.ts'
import type { Part, Special } from '../step.ts'
import { plain } from '../terms/stitch.ts'
import { readWords } from '../words.ts'

function double(count: number, sizes: number): Part {
  return { kind: 'stitch', stitch: plain('doubleCrochet'), count: everySize(count, sizes) }
}

/** Meanings of well-known names where a pattern gives none: common practice, no source. */
function wellKnown(sizes: number): readonly Special[] {
  const chain: Part = { kind: 'chain', count: everySize(1, sizes) }
  const common = (name: string, also: readonly string[], makes: Special['makes'], meaning: string): Special => ({
    name,
    also,
    makes,
    meaning,
    at: null,
  })
  return [
    common('shell', ['sh'], [double(5, sizes)], '5 double crochet in one place'),
    common(
      'V-st',
      ['v-stitch', 'v st', 'vst'],
      [double(1, sizes), chain, double(1, sizes)],
      'two double crochet with ch 1 between',
    ),
    common('cluster', ['cl'], 'one stitch', 'several stitches closed as one'),
    common('bobble', ['bo', 'bob', 'bbl'], 'one stitch', 'several stitches in one place closed as one'),
    common('puff', ['puff st', 'puff stitch'], 'one stitch', 'loops drawn up in one place and closed as one'),
    common('popcorn', ['pc', 'popcorn stitch', 'pop'], 'one stitch', 'several stitches in one place drawn together'),
    common('loop st', ['loop stitch', 'lp st'], 'one stitch', 'a single crochet with a long loop'),
    common('crab st', ['crab stitch'], 'one stitch', 'a single crochet worked from left to right'),
    common('picot', [], [{ kind: 'picot' }], 'chains closed to a small loop'),
  ]
}

/** A name as rows write it: `3 - dc cluster`, words, numbers and marks parted by blanks, in lower case. */
export function wordsOfName(name: string): string {
  const words = readWords({ at: { start: 0, end: name.length }, text: name, holes: [] }, 1)
  return words.map((word) => word.text).join(' ')
}

/** `puff stitch`, `puff st`, `puff-st` and `puff` are one name. */
function variants(name: string): readonly string[] {
  const bare = name.replace(/[ -](?:st|sts|stitch|stitches)$/, '')
  const named = bare === name ? [] : [`${bare} st`, `${bare} stitch`, `${bare}-st`, `${bare}-stitch`]
  // `V` by itself is no name that a row would be read by, and `loop` is a place.
  const short = bare.length > 2 && !/^loop$/.test(bare) ? [bare] : []
  const all = [name, ...short, ...named]
  return all.flatMap((each) => (/[ -]/.test(each) ? [each, each.replace(/ /g, '-'), each.replace(/-/g, ' ')] : [each]))
}

function plural(name: string): string {
  return /(?:ch|sh|s|x)$/.test(name) ? `${name}es` : `${name}s`
}

/** Every spelling that rows may use for a special stitch, in lower case. */
export function spellings({ name, also }: Pick<Special, 'name' | 'also'>): readonly string[] {
  const names = [name, ...also].flatMap((each) => variants(each.toLowerCase()))
  return [...new Set(names.flatMap((each) => [each, plural(each), `${each}s`]).map(wordsOfName))]
}

const known = new WeakMap<Special, readonly string[]>()

/** The spellings of a special stitch, found once. */
export function spellingsOf(special: Special): readonly string[] {
  const before = known.get(special)
  if (before !== undefined) return before
  const found = spellings(special)
  known.set(special, found)
  return found
}

/** Enters a special stitch. A draft's own meaning takes the place of the common one, under all the common names. */
export function enterSpecial(specials: Map<string, Special>, special: Special): void {
  const explicit = [special.name, ...special.also].map(wordsOfName)
  const common = explicit.map((name) => specials.get(name)).find((known) => known?.at === null)
  const shared = common === undefined || special.at === null ? [] : [common.name, ...common.also]
  for (const name of explicit) specials.set(name, special)
  for (const spelling of spellings({ name: special.name, also: [...special.also, ...shared] })) {
    const other = specials.get(spelling)
    if (other === undefined || other.at === null) specials.set(spelling, special)
  }
}

export function wellKnownSpecials(sizes: number): Map<string, Special> {
  const specials = new Map<string, Special>()
  for (const special of wellKnown(sizes)) enterSpecial(specials, special)
  return specials
}

const oneStitchNouns =
  /(?:^|[ -])(?:clusters?|cls?|bobbles?|bo|puffs?|popcorns?|pcs?|mb)(?:[ -](?:sts?|stitch(?:es)?))?$/i

/** Whether a name is of a kind that closes as one stitch, whatever it is made of: `3-dc cluster`, `treble bobble`. */
export function closesAsOne(name: string): boolean {
  return oneStitchNouns.test(name)
}
