import type { Piece } from './piece.ts'

/*
 * Ages are in months, and always the youngest that a size is for: cautions end at an age, and hold as soon as one
 * child who may wear the size is below it.
 */

const years = (count: number): number => 12 * count
const grown = years(18)

/** Words for ages where no number is given (common practice, no source). The first that fits counts. */
const named: readonly (readonly [words: RegExp, youngest: number])[] = [
  [/\b(?:adults?|grown-?ups?|wom[ae]n(?:['’]?s)?|lad(?:y|ies)|m[ae]n(?:['’]?s)?)\b/i, grown],
  [/\b(?:preemies?|prematures?|newborns?|NB)\b/i, 0],
  [/\b(?:bab(?:y|ies)|infants?|prams?|strollers?|carriage|cots?|cribs?|cradles?|bassinets?|nursery)\b/i, 0],
  [/\btoddlers?\b/i, years(1)],
  [/\b(?:child(?:ren)?|kids?|girls?|boys?|little ones?)\b/i, years(3)],
  [/\b(?:youths?|juniors?|tweens?|teens?|teenagers?)\b/i, years(8)],
]

/** Yarns, not people. */
const yarns = /\b(?:baby (?:alpaca|llama|camel|cashmere|merino|yak|yarn|wool)|kid (?:mohair|silk))\b/gi

const unit = String.raw`(?:months?|mos?\b\.?|mths?\b|m\b|years?|yrs?\b|yo\b|y\b|T\b)`
/** `0–3 months`, `12-18m`, `2T`, `6 months–3 years`; a length such as `1 m` has a space before its unit. */
const withUnit = new RegExp(
  String.raw`\b(?<low>\d{1,2})(?<own>\s?${unit})?(?<to>\s*(?:[-–—/]|to)\s*\d{1,2})?(?:\s+(?=[a-z]{2})|-|)(?<unit>${unit})?`,
  'gi',
)
/** `Age 4`, `Ages 4–6` */
const afterAge = /\bage[ds]?\s*(?<low>\d{1,2})/i

/** The youngest age that words name; null where they name none. */
export function youngestIn(words: string): number | null {
  return youngestInNumbers(words) ?? named.find(([pattern]) => pattern.test(words.replace(yarns, '')))?.[1] ?? null
}

function youngestInNumbers(words: string): number | null {
  for (const { groups } of words.matchAll(withUnit)) {
    const written = (groups?.own ?? groups?.unit ?? '').trimStart()
    if (written === '' || (written === 'm' && groups?.own?.startsWith(' '))) continue
    const low = Number(groups?.low)
    if (!/^m/i.test(written)) return years(low)
    return groups?.to === undefined ? stepBelow(low) : low
  }
  const age = afterAge.exec(words)?.groups?.low
  return age === undefined ? null : years(Number(age))
}

/** A baby's size is named after the age at which it is grown out of: 6 months fits from 3, 18 months from 12. */
function stepBelow(months: number): number {
  return months < 12 ? Math.max(0, months - 3) : months - 6
}

/** Shoe sizes of the foot table's children, American (common practice, no source). */
const feet: Readonly<Record<string, number>> = {
  'child 0-4': 0,
  'child 4-8': years(1),
  'child 7-11': years(3),
  'child 10-2': years(5),
  'child 2-6': years(7),
}

const childTables = new Set(['child', 'children', 'youth'])
const adultTables = new Set(['women', 'woman', 'men', 'man'])

/** The youngest age of a body table's column: children's tables count years, women's and men's are for adults. */
function youngestOfColumn(table: string, column: string): number | null {
  if (adultTables.has(table)) return grown
  if (childTables.has(table)) {
    const age = Number.parseInt(column, 10)
    return Number.isNaN(age) ? null : years(age)
  }
  return (table === 'foot' ? feet[column.toLowerCase()] : undefined) ?? youngestIn(column)
}

/**
 * The youngest age that each size is for, by its name or by the body it is drawn on, whichever is younger; else by what
 * title, summary and introduction say. Null for a size that nothing is known of.
 */
export function agesOf(piece: Piece): readonly (number | null)[] {
  const whole = youngestWearer(piece)
  return piece.sizes.map((name, size) => {
    const column = piece.columns[size] ?? null
    const drawn = column === null || piece.table === null ? null : youngestOfColumn(piece.table.toLowerCase(), column)
    return youngest([youngestIn(name), drawn]) ?? whole
  })
}

function youngest(ages: readonly (number | null)[]): number | null {
  const known = ages.flatMap((age) => age ?? [])
  return known.length === 0 ? null : Math.min(...known)
}

/** `A blanket for a new baby`, in what introduces the pattern. */
const meantFor = /\bfor\s+(?:(?:an?|the|your|our|every|each|small|new|little|young|smallest)\s+)*(?<who>\p{L}+)/giu

/** Only children count here: `a gift for a woman` says nothing about who wears it. */
function youngestWearer({ said }: Piece): number | null {
  const titled = said.filter(({ where }) => where === 'title').map(({ text }) => text)
  const introduced = said
    .filter(({ where, section }) => where === 'text' && section === null)
    .flatMap(({ text }) => [...text.matchAll(meantFor)].map(({ groups }) => groups?.who ?? ''))
  return youngest([...titled, ...introduced].map(youngestIn).filter((age) => age !== grown))
}
