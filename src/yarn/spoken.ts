import { type Mention, mentionsIn } from './naming.ts'

/** Strands of each yarn, in the order of the yarns; null where words don't tell. */
export type Strands = readonly number[] | null

/** What words say of the yarn: `now` from their beginning, `next` after them; undefined where they say nothing. */
export interface Spoken {
  readonly now?: Strands
  readonly next?: Strands
}

/** Reads what words say of the yarns by the ways in which these are named. */
export interface YarnReader {
  readonly yarns: number
  readonly aliases: Parameters<typeof mentionsIn>[1]
}

const stitchWords =
  /\d|\b(?:sc|hdc|dc|tr|htr|dtr|fsc|fdc|inc|dec|rep|repeat|each|sl st|shells?|puffs?|clusters?|bobbles?|popcorns?|picots?|single|double|half|treble|ch|sts?)\b/i
const openingWords =
  /\b(?:ch|chain) ?[1-6]\b(?: ?\([^)]*\))?|\b(?:join|attach)[^,.;]*|\bturn(?:ing)?\b|\b(?:right|wrong) side[^,.;]*|\b[RW]S\b[^,.;]*/gi
const closingWords =
  /[([][^()[\]]*[)\]]\.?\s*$|\b(?:in|on|at|with|during) (?:the )?(?:very )?(?:last|final)[^,.;]*|\b(?:at|by) (?:the )?end[^,.;]*|\bfasten off[^,;]*|\bjoin[^,.;]*|\bturn(?:ing)?\b|\b(?:ch|chain) ?[1-6](?=,? ?turn)|\bfor (?:the )?next[^,.;]*|\bto (?:complete|finish|join)[^,.;]*/gi

/** `held double`, `with three strands`: how many of one yarn are worked as one; null where nothing is said. */
export function strandsSaid(text: string): number | null {
  const many =
    /\b(two|three|four|[2-4]) strands?\b|\b(?:held|holding|yarn|used?|worked|with)[^.;,]{0,30}? (doubled?|triple)(?! crochet|-| ?st)\b/i.exec(
      text,
    )
  const word = (many?.[1] ?? many?.[2])?.toLowerCase()
  if (word === undefined) return /\b(?:one|single|a single|1) strand\b/i.test(text) ? 1 : null
  return { two: 2, double: 2, doubled: 2, three: 3, triple: 3, four: 4 }[word] ?? Number(word)
}

const striped =
  /\b(?:alternat\w*|strip(?:e|es|ed|ing)|colou?r (?:sequence|order|changes?)|chang\w+ colou?rs?|each colou?r)\b/i
const together = /\b(?:held|hold|holding|together|both)\b/i

function vectorOf(mentions: readonly Mention[], text: string, { yarns }: YarnReader): Strands {
  const named = new Set(mentions.map(({ yarn }) => yarn))
  if (named.size > 1 && !together.test(text)) return null
  const each = named.size > 1 ? 1 : (strandsSaid(text) ?? 1)
  return Array.from({ length: yarns }, (_, yarn) => (named.has(yarn) ? each : 0))
}

function standsAlone(text: string, { start, end }: Mention): boolean {
  return /\|\s*$/.test(text.slice(0, start)) && /^\s*(?:\||$)/.test(text.slice(end))
}

type Place = 'now' | 'next' | 'within'

/** `With CC, sc in …` and `sc in each st with CC` speak of the whole row, `changing to CC in last st` of the next one. */
function placeOf(text: string, mention: Mention): Place {
  const before = text.slice(0, mention.start).replace(openingWords, '')
  if (!stitchWords.test(before) || standsAlone(text, mention)) return 'now'
  if (stitchWords.test(text.slice(mention.end).replace(closingWords, ''))) return 'within'
  return mention.verb === 'change' ? 'next' : 'now'
}

/** What the words of a row say, its label apart. Colours that change within the row can't be told apart by counting. */
export function spokenInRow(label: string, steps: string, reader: YarnReader): Spoken {
  const inLabel = mentionsIn(label, reader.aliases)
  const inSteps = mentionsIn(steps, reader.aliases)
  const at = (place: Place): readonly Mention[] => inSteps.filter((mention) => placeOf(steps, mention) === place)
  const [now, within, next] = [[...inLabel, ...at('now')], at('within'), at('next')]
  if (within.some(({ yarn }) => now.length !== 1 || now[0]?.yarn !== yarn)) return { now: null, next: null }
  const none = now.length + next.length === 0
  if (none && reader.yarns > 1 && striped.test(steps)) return { now: null, next: null }
  const held = none && reader.yarns === 1 ? strandsSaid(steps) : null
  return {
    ...(held === null ? {} : { now: [held] }),
    ...(now.length === 0 ? {} : { now: vectorOf(now, steps, reader) }),
    ...(next.length === 0 ? {} : { next: vectorOf(next.slice(-1), '', reader) }),
  }
}

/** What prose between rows says of the rows to come. */
export function spokenBetween(text: string, reader: YarnReader): Spoken {
  const mentions = mentionsIn(text, reader.aliases)
  if (reader.yarns > 1 && striped.test(text) && new Set(mentions.map(({ yarn }) => yarn)).size > 1)
    return { next: null }
  const said = mentions.filter(({ verb }) => verb !== '')
  if (said.length > 0) return { next: vectorOf(together.test(text) ? said : said.slice(-1), text, reader) }
  const held = reader.yarns === 1 ? strandsSaid(text) : null
  return held === null ? {} : { next: [held] }
}

const fabricNoun = /\b(?:edging|edge|border|stripes?|section|sides?|pieces?|squares?|rows?|rounds?)\b/gi

/** `Contrast edging`, `Body (MC)`: a heading needs no verb. */
export function spokenInHeading(heading: string, reader: YarnReader): Spoken {
  return spokenBetween(`with ${heading.replace(fabricNoun, '')}`, reader)
}

/** `Hold both yarns together throughout`: what prose before all rows says of the whole; undefined where it says nothing. */
export function heldThroughout(prose: string, reader: YarnReader): Strands | undefined {
  const said = prose
    .split(/[.;\n]/)
    .filter((sentence) => /\bh(?:e|o)ld(?:ing)?\b/i.test(sentence) && /\btogether\b/i.test(sentence))
  for (const sentence of said) {
    const named = new Set(mentionsIn(sentence, reader.aliases).map(({ yarn }) => yarn))
    const all =
      /\b(?:both|all|two|the) (?:the )?(?:yarns|colou?rs|strands)\b/i.test(sentence) || named.size === reader.yarns
    if (reader.yarns > 1 && all) return new Array<number>(reader.yarns).fill(1)
  }
  return undefined
}
