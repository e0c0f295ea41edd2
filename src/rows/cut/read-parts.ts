import type { PerSize } from '../../measure/value.ts'
import type { Content } from '../content.ts'
import type { Count } from '../count.ts'
import type { Label } from '../label.ts'
import { beginsWithWork, isProse } from '../prose.ts'
import type { Vocabulary } from '../reader.ts'
import type { Read } from '../row-reading.ts'
import { readWordsOfRow } from '../row-reading.ts'
import type { Stated, StatedItem } from '../stated/item.ts'
import type { Stitch } from '../terms/stitch.ts'
import type { Word } from '../words.ts'
import type { OwnWords, Prepared } from './prepare.ts'

interface ReadPart {
  readonly only: readonly number[]
  readonly read: Read
  /** It is talk: these sizes work nothing here. */
  readonly idle: boolean
}

function everyItem(parts: readonly ReadPart[], index: number, sizes: number): StatedItem | null {
  const items = parts.map((part) => part.read.stated?.items[index])
  const first = items.find((item) => item !== undefined)
  if (first === undefined) return null
  const count: (number | null)[] = new Array<null>(sizes).fill(null)
  for (const [at, part] of parts.entries()) {
    const item = items[at]
    if (item === undefined) continue
    if (item.shown !== first.shown || typeof item.count === 'function') return null
    const alone = items.every((other) => other === undefined || other === item)
    const its = alone && isList(item.count) ? count.map((_, size) => size) : part.only
    for (const size of its) count[size] = item.count[size] ?? null
  }
  return { ...first, count }
}

/** `Size L: dc across. (40, 46, 50)`: a number for every size, behind the words for the last. */
function isList(count: Count): boolean {
  return count.every((value) => value !== null) && count.some((value) => value !== count[0])
}

/** Counts that each of several parts states for its own sizes. */
function statedOf(parts: readonly ReadPart[], sizes: number): Stated | null {
  const longest = Math.max(0, ...parts.map((part) => part.read.stated?.items.length ?? 0))
  const at = parts.findLast((part) => part.read.stated !== null)?.read.stated?.at
  const items = Array.from({ length: longest }, (_, index) => everyItem(parts, index, sizes))
  const whole = items.filter((item) => item !== null)
  return at === undefined || whole.length < longest || longest === 0 ? null : { items: whole, at }
}

function optionsOf(parts: readonly ReadPart[], sizes: number): PerSize<Content | null> {
  return Array.from({ length: sizes }, (_, size) => {
    const part = parts.find(({ only }) => only.includes(size))
    return part === undefined || part.idle ? null : part.read.content
  })
}

/** A row that says for each of some sizes something of its own. */
function readSeveral(
  own: readonly OwnWords[],
  prepared: Prepared,
  vocabulary: Vocabulary,
  stitch: Stitch | null,
): Read {
  const [lead, ...others] = own
  const common = lead?.only === null ? lead.words : []
  const named = lead === undefined || lead.only === null ? others : own
  const parts = named.map(({ only, words }): ReadPart => {
    const read = readWordsOfRow([...common, ...words], vocabulary, stitch, prepared.opensLine)
    return { only: only ?? [], read, idle: read.content === null && isProse(words, vocabulary) }
  })
  const words = own.flatMap((each) => each.words)
  const failed = parts.find((part) => part.read.content === null && !part.idle)
  const last = parts.findLast((part) => part.read.stitch !== null)?.read.stitch ?? stitch
  if (failed !== undefined || parts.every((part) => part.idle)) {
    const unread = (failed ?? parts[0])?.read.unread ?? null
    return { content: null, unread, stated: null, run: [], words, stitch: last }
  }
  const options = optionsOf(parts, vocabulary.sizes)
  return {
    content: { kind: 'bySize', options },
    unread: null,
    stated: statedOf(parts, vocabulary.sizes),
    run: [],
    words,
    stitch: last,
  }
}

/** Reads what a chunk says after its label, for all sizes or for each of those that it names. */
export function readPrepared(prepared: Prepared, vocabulary: Vocabulary, stitch: Stitch | null): Read {
  const { own, opensLine, label } = prepared
  const [first] = own
  if (own.length > 1) return readSeveral(own, prepared, vocabulary, stitch)
  const words = first?.words ?? []
  const said = label === null ? withoutLead(words) : afterName(label, words)
  const read = readWordsOfRow(said, vocabulary, stitch, opensLine)
  const named = label === null && read.content === null ? withoutName(words, vocabulary) : null
  return named === null ? read : readWordsOfRow(named, vocabulary, stitch, opensLine)
}

/** The most words that a name of a few rows has: `Divide for front and back:` */
const mostNameWords = 7

/** `Divide for front and back: Ch 1, …`: what is worked after a name that is no label. */
export function withoutName(words: readonly Word[], vocabulary: Vocabulary): readonly Word[] | null {
  const end = words.findIndex((word) => word.text === ':')
  if (end < 1 || end > mostNameWords) return null
  const name = words.slice(0, end)
  const plain = name.every((word) => word.kind === 'word') && isProse(name, vocabulary)
  return plain && beginsWithWork(words.slice(end + 1), vocabulary) ? words.slice(end + 1) : null
}

/** `Next, increase in every stitch.` */
function withoutLead(words: readonly Word[]): readonly Word[] {
  const leads = /^(?:next|then|now|finally|lastly|first|after)$/.test(words[0]?.text ?? '')
  return leads && words[1]?.text === ',' ? words.slice(2) : words
}

/** `Foundation chain: 40` */
function afterName({ name, at }: Label, words: readonly Word[]): readonly Word[] {
  const [first, second] = words
  const alone = first?.kind === 'number' && !/^\p{L}/u.test(second?.text ?? '')
  if (!alone || !/\b(?:chain|ch)$/i.test(name)) return words
  return [{ at, text: 'ch', glued: false, kind: 'word' }, ...words]
}
