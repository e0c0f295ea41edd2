import type { Memory } from '../memory.ts'
import { nothingDone, type Place } from './place.ts'

/** A place with the ones before it, the latest first, so that steps can be taken back. */
export interface Kept {
  readonly place: Place
  readonly before: readonly Place[]
}

/** Steps that can be taken back. */
const mostSteps = 20

export function stepped({ place, before }: Kept, next: Place): Kept {
  return { place: next, before: [place, ...before].slice(0, mostSteps) }
}

export function steppedBack({ place, before }: Kept): Kept {
  const [last = place, ...earlier] = before
  return { place: last, before: earlier }
}

/** What a place is for: another edition may have other rows, and another size works them otherwise. */
export interface Whose {
  readonly slug: string
  readonly edition: string | null
  readonly size: string
}

function nameOf({ slug, edition, size }: Whose): string {
  return `place:${slug}:${edition ?? ''}:${size}`
}

export function recall(memory: Memory, whose: Whose): Kept {
  return read(memory.read(nameOf(whose))) ?? { place: nothingDone, before: [] }
}

export function keep(memory: Memory, whose: Whose, kept: Kept): void {
  memory.write(nameOf(whose), JSON.stringify(kept))
}

/** Whether something with this name in the device's store is this place: another window may have moved it. */
export function isPlaceOf(stored: string | null, whose: Whose): boolean {
  return stored?.endsWith(`:${nameOf(whose)}`) === true
}

/** A place in an older edition. */
export interface Older {
  readonly edition: string
  readonly place: Place
}

/** The latest other edition for which a place of the same size is kept; null where there is none. */
export function fromOlder(memory: Memory, whose: Whose): Older | null {
  const start = `place:${whose.slug}:`
  const end = `:${whose.size}`
  const editions = memory
    .names()
    .filter((name) => name.startsWith(start) && name.endsWith(end) && name !== nameOf(whose))
    .map((name) => name.slice(start.length, -end.length))
    .toSorted((a, b) => b.localeCompare(a, 'en', { numeric: true }))
  for (const edition of editions) {
    const { place } = recall(memory, { ...whose, edition })
    if (place.at !== null) return { edition, place }
  }
  return null
}

/** Null for a text that is no place: another program's, or one that was cut off. */
function read(text: string | null): Kept | null {
  if (text === null) return null
  try {
    const data: unknown = JSON.parse(text)
    if (!isRecord(data) || !isPlace(data.place) || !Array.isArray(data.before)) return null
    return { place: data.place, before: data.before.filter(isPlace) }
  } catch {
    return null
  }
}

function isRecord(data: unknown): data is Record<string, unknown> {
  return typeof data === 'object' && data !== null && !Array.isArray(data)
}

function isPlace(data: unknown): data is Place {
  return (
    isRecord(data) &&
    isCounts(data.done) &&
    isCounts(data.finished) &&
    (data.at === null || typeof data.at === 'string')
  )
}

function isCounts(data: unknown): boolean {
  return isRecord(data) && Object.values(data).every((count) => Number.isInteger(count) && Number(count) >= 0)
}
