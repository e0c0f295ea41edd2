import type { Strip } from './strip.ts'
import { heightOf } from './strip.ts'

/** A strip and the place of its upper edge, in points below the upper edge of the text area. */
export interface Placed {
  readonly strip: Strip
  readonly top: number
  /** Drawn for the eye only: it has been read out before. */
  readonly repeated: boolean
}

export interface SetPage {
  readonly placed: readonly Placed[]
  /** The piece that the page's first strip belongs to; null before the first piece. */
  readonly piece: string | null
}

/** A page being filled. */
interface Sheet {
  readonly placed: Placed[]
  used: number
  piece: string | null
  /** The piece that the next page goes on with. */
  goesOn: string | null
}

/** A group longer than a page begins on the current one only where this much is left. */
const leastStart = 120

/** A part starts a page of its own when its forerunner has filled more of the last page than this. */
const wellFilled = 0.55

/**
 * Shares out the strips of the parts over pages of `height` points. Strips kept together go to the next
 * page together; a group longer than a page is cut between strips.
 */
export function paginate(parts: readonly (readonly Strip[])[], height: number): readonly SetPage[] {
  const sheets: Sheet[] = [{ placed: [], used: 0, piece: null, goesOn: null }]
  for (const strips of parts) {
    if (strips.length > 0 && current(sheets).used > height * wellFilled) turn(sheets)
    for (const group of groups(strips)) placeGroup(sheets, group, height)
  }
  return sheets
}

function groups(strips: readonly Strip[]): readonly (readonly Strip[])[] {
  const groups: Strip[][] = []
  let open = false
  for (const strip of strips) {
    if (open) groups.at(-1)?.push(strip)
    else groups.push([strip])
    open = strip.keep
  }
  return groups
}

function placeGroup(sheets: Sheet[], group: readonly Strip[], height: number): void {
  const sheet = current(sheets)
  const left = height - sheet.used
  const needed = heightOf(group, sheet.placed.length === 0)
  const tooLong = heightOf(group, true) > height
  const begun = sheet.placed.length > 0
  if (begun && needed > left && (!tooLong || left < leastStart)) turn(sheets)
  for (const strip of group) place(sheets, strip, height)
}

function place(sheets: Sheet[], strip: Strip, height: number): void {
  let sheet = current(sheets)
  if (sheet.used > 0 && sheet.used + strip.gap + strip.height > height) sheet = turn(sheets)
  if (sheet.placed.length === 0) {
    sheet.piece = strip.opens ?? sheet.piece
    for (const header of strip.repeats ?? []) put(sheet, header, true)
  }
  put(sheet, strip, false)
  sheet.goesOn = strip.opens ?? sheet.goesOn
}

function put(sheet: Sheet, strip: Strip, repeated: boolean): void {
  const top = sheet.placed.length === 0 ? 0 : sheet.used + strip.gap
  sheet.placed.push({ strip, top, repeated })
  sheet.used = top + strip.height
}

function current(sheets: readonly Sheet[]): Sheet {
  const sheet = sheets.at(-1)
  if (sheet === undefined) throw new Error('pagination starts with a page')
  return sheet
}

function turn(sheets: Sheet[]): Sheet {
  const { goesOn } = current(sheets)
  const sheet = { placed: [], used: 0, piece: goesOn, goesOn }
  sheets.push(sheet)
  return sheet
}
