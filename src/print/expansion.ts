import type { Abbreviation } from '../pattern/pattern.ts'

/** How a word is read out in full, with its brackets and commas; null for one without abbreviations. */
export type Spoken = (word: string) => string | null

/** Letters and figures that follow each other: an abbreviation is never a part of them, as `st` is in `1st` or `last`. */
const run = /(?<![\p{L}\p{N}])\p{L}[\p{L}\p{N}]*/gu

/**
 * Reads abbreviations out in full: `sc,` as `single crochet,`, `Ch` as `chain`, `sts` as `stitches`. A special stitch
 * is not spelled out, for its meaning is a definition.
 */
export function readAloud(abbreviations: readonly Abbreviation[]): Spoken {
  const meanings = new Map(abbreviations.filter(({ special }) => !special).flatMap(formsOf))
  const known = new Map<string, string | null>()
  return (word) => {
    const before = known.get(word)
    if (before !== undefined) return before
    const full = word.replace(run, (short) => meaningOf(short, meanings) ?? short)
    const spoken = full === word ? null : full
    known.set(word, spoken)
    return spoken
  }
}

/** `Ch` opens a sentence, `chs` are several. */
function meaningOf(short: string, meanings: ReadonlyMap<string, string>): string | null {
  const lower = short.charAt(0).toLowerCase() + short.slice(1)
  const found = meanings.get(short) ?? meanings.get(lower)
  if (found !== undefined) return found
  const one = lower.endsWith('s') ? meanings.get(lower.slice(0, -1)) : undefined
  return one === undefined ? null : `${one}s`
}

/** Spellings of an abbreviation with their meanings, word by word where there are several: a line may end between them. */
function formsOf({ abbreviation, meaning }: Abbreviation): readonly (readonly [short: string, full: string])[] {
  const plural = /\((e?s)\)/g
  const single = [abbreviation, meaning].map((words) => words.replace(plural, ''))
  const several = [abbreviation, meaning].map((words) => words.replace(plural, '$1'))
  return [single, several].flatMap(([short = '', full = '']) => {
    const [shorts, fulls] = [short.split(' '), full.split(' ')]
    if (shorts.length === 1) return [[short, full]]
    return shorts.length === fulls.length ? shorts.map((word, index) => [word, fulls[index] ?? word] as const) : []
  })
}
