import type { Composer } from './composer.ts'
import type { CountSizes, SetPart } from './count-part.ts'
import { countSizes, heightOfPart, setPart } from './count-part.ts'
import type { CountPiece, CountRow } from './count-rows.ts'
import type { Strip } from './strip.ts'

/** Type sizes that are tried, the largest first. */
const typeSizes = [12, 11, 10, 9, 8, 7, 6.5] as const
const columnSpace = 24
/** Between the words at the head of the page and the counts. */
const above = 12

/** Rows of one piece that stand below each other in a column. */
export interface Part {
  readonly title: string
  /** Whether the piece begins here; else it goes on from another column. */
  readonly begins: boolean
  readonly rows: readonly CountRow[]
}

type Column = readonly Part[]

/**
 * Counts in columns beside each other, a strip for each page: of the first page `first` points are left, of others
 * `height`. All on the first page where letters of any of the sizes allow it.
 */
export function flow(
  pieces: readonly CountPiece[],
  sizes: readonly string[],
  first: number,
  height: number,
  composer: Composer,
): readonly Strip[] {
  if (pieces.length === 0) return []
  const room = composer.frame.end - composer.frame.start
  const tries = typeSizes.map((size) => {
    const measures = countSizes(pieces, sizes, size, composer)
    const across = Math.max(1, Math.floor((room + columnSpace) / (measures.width + columnSpace)))
    return { measures, across, columns: fill(pieces, measures, (column) => (column < across ? first : height) - above) }
  })
  const chosen = tries.find(({ columns, across }) => columns.length <= across) ?? tries.at(-1)
  if (chosen === undefined) return []
  const { columns, across, measures } = chosen
  return Array.from({ length: Math.ceil(columns.length / across) }, (_, page) => {
    const here = columns.slice(page * across, (page + 1) * across)
    return pageStrip(here, measures, page === 0 ? first : height, composer)
  })
}

/** Shares the rows out over columns; `heightAt` is the room of a column, counted from nought. */
function fill(
  pieces: readonly CountPiece[],
  measures: CountSizes,
  heightAt: (column: number) => number,
): readonly Column[] {
  const columns: Part[][] = [[]]
  let used = 0
  for (const { title, rows } of pieces) {
    let part: CountRow[] = []
    const put = (begins: boolean): void => {
      if (part.length > 0) columns.at(-1)?.push({ title, begins, rows: part })
      part = []
    }
    let begins = true
    for (const row of rows) {
      const needed = heightOfPart({ title, begins, rows: [...part, row] }, measures)
      if (used + needed > heightAt(columns.length - 1) && (used > 0 || part.length > 0)) {
        if (part.length > 0) {
          put(begins)
          begins = false
        }
        columns.push([])
        used = 0
      }
      part.push(row)
    }
    used += heightOfPart({ title, begins, rows: part }, measures)
    put(begins)
  }
  return columns
}

/** The columns of a page, side by side. */
function pageStrip(columns: readonly Column[], measures: CountSizes, height: number, composer: Composer): Strip {
  const { start } = composer.frame
  const placed = columns.flatMap((parts, column) => {
    const x = start + column * (measures.width + columnSpace)
    let top = 0
    return parts.map((part): { readonly set: SetPart; readonly top: number } => {
      const set = setPart(part, measures, x, composer)
      const at = top
      top += heightOfPart(part, measures)
      return { set, top: at }
    })
  })
  const draw: Strip['draw'] = (pen, top) => {
    for (const each of placed) each.set(pen, top + each.top)
  }
  return { height: Math.floor(height - above), gap: above, keep: false, draw }
}
