import type { Reader } from '../reader.ts'
import { attempt, numberAt, peek, take } from '../reader.ts'
import type { StatedItem } from './item.ts'
import { statedFor } from './item.ts'
import { readNoun } from './noun.ts'

/** Takes the name of a size and the sign after it: `Adult S:`; its position, -1 for none. */
function takeSize(reader: Reader): number {
  const { sizeNames } = reader.vocabulary
  let found = -1
  let length = 0
  sizeNames.forEach((name, size) => {
    const words = name.split(' ')
    const fits = words.every((word, ahead) => peek(reader, ahead)?.text === word)
    if (fits && words.length > length) {
      found = size
      length = words.length
    }
  })
  reader.at += length
  if (found >= 0) take(reader, ':', '=', '–', '-')
  return found
}

/** `S: 40, M: 44, L: 48 sc`: a number for each size by its name, and one noun. */
export function namedSizes(reader: Reader): StatedItem | null {
  const { sizes } = reader.vocabulary
  const numbers = new Map<number, number | null>()
  take(reader, 'size', 'sizes')
  for (let size = takeSize(reader); size >= 0; size = takeSize(reader)) {
    const count = numberAt(reader)
    if (count === null || numbers.has(size)) return null
    reader.at += 1
    numbers.set(size, count.count[size] ?? null)
    if (numbers.size === sizes) break
    // `S: 40 sc, M: 44 sc`
    if (!take(reader, ',', ';', '/'))
      attempt(reader, (inner) => (readNoun(inner, null) && take(inner, ',', ';', '/') ? true : null))
    take(reader, 'and')
  }
  if (sizes < 2 || numbers.size < sizes) return null
  const { shown, of } = readNoun(reader, null)
  return { shown, of, count: Array.from({ length: sizes }, (_, size) => numbers.get(size) ?? null), by: null }
}

/** `40 sc, 44 sc, 48 sc` in a draft of three sizes; null for counts of several kinds. */
export function bySize(items: readonly StatedItem[], sizes: number): readonly StatedItem[] | null {
  const [first] = items
  if (first === undefined || sizes < 2 || items.length !== sizes || items.some((each) => each.shown !== first.shown))
    return null
  const count = items.map((each, size) => statedFor(each, size))
  return [{ ...first, count }]
}
