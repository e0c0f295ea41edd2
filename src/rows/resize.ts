import type { Kinds, Row } from './fabric.ts'

/** A row of stitches or chains without spaces, with so many more or fewer of its commonest kind. */
export function resized(kinds: Kinds, row: Row, by: number): Row | null {
  const stitches = row.places.every((place) => {
    const kind = kinds.list[place]
    return kind?.what === 'stitch' || kind?.what === 'turning' || kind?.what === 'chain'
  })
  const middle = row.places.length >> 1
  const kind = row.places[middle]
  if (!stitches || kind === undefined || row.places.length + by < 1 || by > row.places.length) return null
  const resizedList = (list: readonly number[], filling: number): readonly number[] =>
    by < 0 ? list.toSpliced(middle, -by) : list.toSpliced(middle, 0, ...new Array<number>(by).fill(filling))
  const refs = (): readonly number[] => resizedList(row.refs(), -1)
  return { ...row, places: resizedList(row.places, kind), refs, groups: [], names: [] }
}
