import { viewOf } from './truetype.ts'

/** First and last character of a stretch that a font has letters for. */
type Stretch = readonly [first: number, last: number]

/**
 * The characters that a font has, from its table `cmap` alone (OpenType specification, "cmap", formats 4 and 12): to know
 * whether a letter can be printed, no font need be opened. Nothing where the table has neither format.
 */
export function charactersOf(cmap: Uint8Array): ReadonlySet<number> {
  const view = viewOf(cmap)
  const starts = Array.from({ length: view.getUint16(2) }, (_, index) => view.getUint32(8 + 8 * index))
  const characters = new Set<number>()
  for (const start of new Set(starts)) {
    for (const [first, last] of stretchesOf(view, start)) {
      for (let character = first; character <= last; character++) characters.add(character)
    }
  }
  characters.delete(0xffff)
  return characters
}

function stretchesOf(view: DataView, start: number): readonly Stretch[] {
  const format = view.getUint16(start)
  if (format === 4) return segments(view, start)
  return format === 12 ? groups(view, start) : []
}

/** Ends of all segments, two bytes, then their starts. */
function segments(view: DataView, start: number): readonly Stretch[] {
  const twice = view.getUint16(start + 6)
  return Array.from({ length: twice / 2 }, (_, index) => {
    const end = start + 14 + 2 * index
    return [view.getUint16(end + 2 + twice), view.getUint16(end)]
  })
}

function groups(view: DataView, start: number): readonly Stretch[] {
  return Array.from({ length: view.getUint32(start + 12) }, (_, index) => {
    const group = start + 16 + 12 * index
    return [view.getUint32(group), view.getUint32(group + 4)]
  })
}
