import type { Word } from './words.ts'

/** Words that name a colour. */
export const colourNames: readonly string[] = (
  'black white red blue green yellow orange pink purple brown grey gray cream beige tan navy teal turquoise violet lilac lavender ' +
  'gold golden silver ivory mint coral peach salmon rose maroon burgundy mustard olive charcoal rust magenta aqua lime skin main ' +
  'contrast contrasting natural ecru off-white crimson scarlet claret violet amber steel drab buff fawn mauve puce maize ' +
  'primrose cerise amethyst chestnut plum slate straw ruby emerald azure cherry canary amaranth chocolate lemon bronze'
).split(' ')
const names = new Set(colourNames)
const letters = /^[a-hc]$/
const nouns = /^(?:colou?rs?|yarn|thread|wool|silk|cotton|shade)$/
const shades = /^(?:light|dark|pale|bright|deep|medium|soft|hot|lightest|darkest|lighter|darker|palest|deepest)$/
const ends = /^[,;.:()[\]*]$/

const textAt = (words: readonly Word[], at: number): string => words[at]?.text ?? ''

/** Words of a colour from `at` on, `dark blue yarn`, `colour 2`, `C1`: how many, 0 for none. */
function colourWords(words: readonly Word[], at: number): number {
  let end = at
  while (shades.test(textAt(words, end))) end += 1
  if (nouns.test(textAt(words, end))) {
    const next = words[end + 1]
    const named =
      next?.kind === 'number' || (next !== undefined && letters.test(next.text)) || names.has(textAt(words, end + 1))
    return named ? end + 2 - at : 0
  }
  if (names.has(textAt(words, end))) return end + 1 + (nouns.test(textAt(words, end + 1)) ? 1 : 0) - at
  // `C1`, `A`: only where nothing else could be meant.
  if (textAt(words, at) === 'c' && words[at + 1]?.kind === 'number' && words[at + 1]?.glued) return 2
  return 0
}

/** `in black`, `all in dark red`, up to the end of its clause. */
function trailing(words: readonly Word[], at: number): number {
  const all = textAt(words, at) === 'all' ? 1 : 0
  if (textAt(words, at + all) !== 'in') return 0
  const the = textAt(words, at + all + 1) === 'the' ? 1 : 0
  const length = colourWords(words, at + all + 1 + the)
  const end = at + all + 1 + the + length
  return length > 0 && (end >= words.length || ends.test(textAt(words, end))) ? end - at : 0
}

const isMain = /^[mc]c$/
const begins =
  /^(?:sc|dc|hdc|tr|htr|dtr|sl|ss|ch|chain|inc|dec|work|make|sk|skip|miss|fpdc|bpdc|single|double|half|treble|[([])$/

/** `with MC` before stitches. */
function leading(words: readonly Word[], at: number): number {
  if (!/^(?:with|using|in)$/.test(textAt(words, at))) return 0
  const noun = nouns.test(textAt(words, at + 1)) ? 1 : 0
  const name = textAt(words, at + 1 + noun)
  const named = isMain.test(name) || letters.test(name) ? noun + 1 : colourWords(words, at + 1)
  const next = words[at + 1 + named]
  // `join with a sc` names no colour.
  if (name === 'a' && noun === 0 && next?.kind !== 'number') return 0
  return named > 0 && (next?.kind === 'number' || begins.test(next?.text ?? '')) ? named + 1 : 0
}

/** `1 sc MC,`: behind its stitch. */
function behind(words: readonly Word[], at: number): number {
  const name = textAt(words, at)
  if (!(isMain.test(name) || letters.test(name)) || !ends.test(textAt(words, at + 1))) return 0
  return /^(?:sc|dc|hdc|tr|htr|st|sts)$/.test(textAt(words, at - 1)) ? 1 : 0
}

/** `(black)`, `(C1)`, `(MC)` before stitches. */
function bracketed(words: readonly Word[], at: number): number {
  if (!/^[([]$/.test(textAt(words, at))) return 0
  const length = /^[mc]c$/.test(textAt(words, at + 1)) ? 1 : colourWords(words, at + 1)
  return length > 0 && /^[)\]]$/.test(textAt(words, at + 1 + length)) ? length + 2 : 0
}

/**
 * Takes out which colour is worked: it makes no stitch.
 *
 *     sc 5 in black, (C2) inc, with MC sc 2, 1 dc CC   →   sc 5, inc, sc 2, 1 dc
 */
export function withoutColours(words: readonly Word[]): readonly Word[] {
  const out: Word[] = []
  for (let at = 0; at < words.length; ) {
    const length = trailing(words, at) || bracketed(words, at) || leading(words, at) || behind(words, at)
    const word = words[at]
    if (length === 0 && word !== undefined) out.push(word)
    at += Math.max(1, length)
  }
  return out.length === words.length ? words : out
}
