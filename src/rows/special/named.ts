import type { Special } from '../step.ts'
import type { Dictionary } from '../terms/dictionary.ts'
import type { Section } from '../written.ts'
import { enterSpecial, wordsOfName } from './known.ts'

const opening = /\b(beg|beginning|starting|end|ending)[ -]([\p{L}-]+(?: st| stitch)?)/giu
const numbered = /\b(\d)[ -]?(sc|hdc|dc|tr|dtr|htr|ttr)[ -](cluster|cl|bobble|popcorn|pc|puff)s?\b/gi

/** `beg puff` where only puffs are known: one more of them, at the beginning of a row. */
function openings(text: string, specials: Map<string, Special>): void {
  for (const [, kind = '', base = ''] of text.matchAll(opening)) {
    const own = [base, base.replace(/ st$| stitch$/, '')]
    const known = own.map((name) => specials.get(wordsOfName(name))).find((each) => each !== undefined)
    const name = `${kind.toLowerCase()} ${known?.name ?? ''}`
    // `end` alone may be the verb.
    const sure = known !== undefined && (known.makes === 'one stitch' || !/^end/i.test(kind))
    if (sure && !specials.has(wordsOfName(`${kind} ${base}`)))
      enterSpecial(specials, { ...known, name, also: [`${kind} ${base}`] })
  }
}

/** `3-dc cluster`: so many stitches that close as one. */
function clusters(text: string, specials: Map<string, Special>, { stitches }: Dictionary): void {
  for (const [, count = '', stitch = '', noun = ''] of text.matchAll(numbered)) {
    const name = `${count}-${stitch} ${noun}`.toLowerCase()
    if (specials.has(wordsOfName(name)) || !stitches.has(stitch.toLowerCase())) continue
    const also = [`${count}${stitch} ${noun}`, `${count} ${stitch} ${noun}`, `${count}-${stitch}-${noun}`]
    const meaning = `${count} ${stitch} in one place closed as one`
    enterSpecial(specials, { name, also, makes: 'one stitch', meaning, at: null })
  }
}

/** Names that rows make of others, and that tell their meaning by themselves. */
export function enterNamed(sections: readonly Section[], specials: Map<string, Special>, dictionary: Dictionary): void {
  for (const { passages } of sections) {
    for (const { text } of passages) {
      clusters(text, specials, dictionary)
      openings(text, specials)
    }
  }
}
