import type { Count } from '../count.ts'
import type { Reader, Vocabulary } from '../reader.ts'
import { attempt, createReader, numberAt, peek, take, takeStitch, textAt } from '../reader.ts'
import type { Word } from '../words.ts'
import { chainApart, saidRule } from './aside.ts'
import { bySize, namedSizes } from './by-size.ts'
import type { CountingRule, StatedItem } from './item.ts'
import { passSide, readNoun } from './noun.ts'

/** The longest list of counts that is looked at, in words. */
const mostWords = 60

const lead = new Set(
  (
    "you you’ll you'll should will now have has had there are is be = total totals of with ending end ends count counts " +
    'counted st sts stitch stitches made up in : for a an at the this that row rnd round number no . leaving giving making ' +
    'makes gives leaves so and approx final result resulting still which after finish finished - –'
  ).split(' '),
)

/** Words before the first number: `You will now have`, `Stitch count:`, `At the end of Row 9:`. */
function passLead(reader: Reader): void {
  for (;;) {
    // The number after `Row` is its own: `At the end of Row 9: 18 sts`.
    if (/^(?:row|rnd|round)$/.test(textAt(reader)) && numberAt(reader, 1) !== null) {
      reader.at += 2
      take(reader, ':', ',', '=')
      continue
    }
    if (!lead.has(textAt(reader))) return
    reader.at += 1
  }
}

const trail = new Set(
  (
    'made total in all rem remain remains remaining left now around across altogether completed worked on needle hook at ' +
    'the end of this that row rnd round your you have there should be per after so far approx last final'
  ).split(' '),
)

function passTrail(reader: Reader): void {
  for (;;) {
    const text = textAt(reader)
    if (!trail.has(text)) return
    reader.at += 1
    if (/^(?:row|rnd|round)$/.test(text) && numberAt(reader) !== null) reader.at += 1
  }
}

const changeWords = "inc dec inc'd dec'd inc’d dec’d incs decs increased decreased added lost"
const changes = changeWords.split(' ')
const increases = 'inc incs dec decs increase increases decrease decreases'.split(' ')

/** `2 sts dec'd`, `6 inc`, `+6`, `6 rows`: a change, or how many rows there are; no count. */
function passChange(reader: Reader): 'change' | 'rows' | null {
  const from = reader.at
  const signed = take(reader, '+', '-', '–')
  if (numberAt(reader) !== null) {
    reader.at += 1
    const noun = take(reader, 'st', 'sts', 'stitch', 'stitches') || attempt(reader, takeStitch) !== null
    if (take(reader, 'row', 'rows', 'rnd', 'rnds', 'round', 'rounds')) return 'rows'
    if (signed || take(reader, ...(noun ? changes : increases))) {
      take(reader, 'made', 'worked')
      return 'change'
    }
  }
  reader.at = from
  return null
}

function counted(reader: Reader): Count | StatedItem['count'] | null {
  const word = peek(reader)
  if (word?.kind === 'made') {
    reader.at += 1
    return word.of
  }
  if (
    word?.kind !== 'number' ||
    word.ordinal ||
    !word.count.every((value) => value === null || Number.isInteger(value))
  )
    return null
  reader.at += 1
  return word.count
}

const units = /^(?:cm|mm|m|in|inch|inches|ins|"|”|yd|yds|g|oz)$/

function item(reader: Reader): StatedItem | null {
  const before = passSide(reader) ? 'per side' : null
  if (before !== null) take(reader, ':', '=', 'has', 'have')
  const count = counted(reader)
  if (count === null) return null
  // `[13 in]`: a length
  if (units.test(textAt(reader)) && reader.at + 1 >= reader.end) return null
  const { shown, of } = readNoun(reader, before)
  return { shown, of, count, by: null }
}

/** What a list of counts says beside the counts. */
interface Found {
  readonly items: readonly StatedItem[]
  readonly changes: number
}

function follows(rule: readonly CountingRule[] | null, item: StatedItem): StatedItem {
  return rule !== null && (item.of.kind === 'total' || item.of.kind === 'key') ? { ...item, by: rule } : item
}

function more(reader: Reader): boolean {
  if (!take(reader, ',', 'and', '+', ';', '/', 'with', 'plus', '–')) return false
  while (take(reader, 'and', 'a', 'total', 'of'));
  return true
}

function list(reader: Reader): Found | null {
  passLead(reader)
  const items: StatedItem[] = []
  let changed = 0
  let rule: readonly CountingRule[] | null = null
  do {
    const change = passChange(reader)
    const apart = change === null ? chainApart(reader) : null
    if (change === 'change') changed += 1
    else if (apart !== null) rule = [apart]
    else if (change === null) {
      const next = attempt(reader, namedSizes) ?? item(reader)
      if (next === null) return null
      items.push(next)
    }
    passTrail(reader)
    rule = saidRule(reader) ?? rule
  } while (more(reader))
  while (take(reader, '.'));
  if (reader.at < reader.end) return null
  const all = bySize(items, reader.vocabulary.sizes) ?? items
  return { items: all.map((each) => follows(rule, each)), changes: changed }
}

/**
 * Words that are counts and nothing else; null for any others. A list that only tells how many stitches come
 * or go has no items.
 *
 *     12 dc, 4 ch-2 sps     You should have 18 sts at the end of this round     12 sts between corners
 */
export function readItems(words: readonly Word[], vocabulary: Vocabulary): readonly StatedItem[] | null {
  if (words.length === 0 || words.length > mostWords) return null
  const found = list(createReader(words, vocabulary, () => null, null))
  return found === null || (found.items.length === 0 && found.changes === 0) ? null : found.items
}
