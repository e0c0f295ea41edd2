import type { Composer } from './composer.ts'
import type { Line } from './line.ts'
import { breakLines } from './line.ts'
import type { Look } from './look.ts'
import { roundedSquare } from './operators.ts'
import type { Pen } from './pen.ts'
import type { Strip } from './strip.ts'
import { drawLine } from './strip.ts'

/** More rows than this have a box for every ten. */
const mostBoxes = 100
const rowsOfABox = 10

/** One box beside the first line of a row. */
export function tickBox(strips: readonly Strip[], x: number, { look }: Composer): readonly Strip[] {
  return strips.map((strip, index) => {
    if (index > 0) return strip
    const draw: Strip['draw'] = (pen, top) => {
      drawBoxes(pen, [[x, top + boxTop(look)]], look)
      strip.draw(pen, top)
    }
    return { ...strip, draw }
  })
}

/** Boxes stand on the line of the letters beside them. */
const boxTop = ({ leading, box }: Look): number => leading.text * 0.73 - box.side + box.thickness / 2

function drawBoxes(pen: Pen, corners: readonly (readonly [x: number, y: number])[], look: Look): void {
  pen.boxes(corners, roundedSquare(look.box.side, look.box.side / 7.5), look.colours.soft, look.box.thickness)
}

/** A box, or a word after one; places in points, `line` counts from nought. */
interface Place {
  readonly line: number
  readonly x: number
}

interface Note extends Place {
  readonly words: Line
}

/**
 * A box for each row of a range, from `x` on and no wider than `width`, in groups of five. `notes` are words that stand
 * after the box of a number: how many these are, or the size that ends there. A very long range has a box for every ten.
 */
export function tickBoxes(
  count: number,
  notes: ReadonlyMap<number, string>,
  x: number,
  width: number,
  composer: Composer,
): readonly Strip[] {
  const coarse = count > mostBoxes
  const boxes = coarse ? Math.ceil(count / rowsOfABox) : count
  const words = coarse ? new Map([[boxes, `a box for every ${rowsOfABox} rows`]]) : notes
  const placed = place(boxes, words, width, composer)
  const { leading } = composer.look
  const lines = 1 + Math.max(...placed.boxes.map((box) => box.line), ...placed.notes.map((note) => note.line))
  return Array.from({ length: lines }, (_, line): Strip => {
    const lefts = placed.boxes.filter((box) => box.line === line).map((box) => x + box.x)
    const here = placed.notes.filter((note) => note.line === line)
    const draw: Strip['draw'] = (pen, top) => {
      drawBoxes(
        pen,
        lefts.map((left) => [left, top + boxTop(composer.look)]),
        composer.look,
      )
      const setting = { tag: composer.parent, width: 0, leading: leading.text }
      pen.artifact('Layout', () => {
        for (const note of here) drawLine(pen, note.words, { ...setting, x: x + note.x }, top)
      })
    }
    return { height: leading.text, gap: 0, keep: true, draw }
  })
}

function place(
  count: number,
  words: ReadonlyMap<number, string>,
  width: number,
  composer: Composer,
): { readonly boxes: readonly Place[]; readonly notes: readonly Note[] } {
  const { box, styles } = composer.look
  const boxes: Place[] = []
  const notes: Note[] = []
  let line = 0
  let x = 0
  const needs = (room: number): void => {
    if (x === 0 || x + room <= width) return
    line += 1
    x = 0
  }
  for (let number = 1; number <= count; number++) {
    const inGroup = (number - 1) % 5
    const text = words.get(number)
    const [note] = text === undefined ? [] : breakLines(composer, [{ text, style: styles.tiny }], width - box.pitch)
    // How many boxes there are is only said where there is room; any other word goes on with its box.
    const counts = /^\d+$/.test(text ?? '')
    const own = box.pitch + (note === undefined || counts ? 0 : note.width)
    needs(inGroup === 0 ? Math.max(own, Math.min(5, count - number + 1) * box.pitch) : own)
    boxes.push({ line, x })
    x += box.pitch
    if (note !== undefined && (!counts || x + note.width <= width)) {
      notes.push({ line, x, words: note })
      x += note.width + box.group
    } else if (inGroup === 4) x += box.group
  }
  return { boxes, notes }
}

/**
 * What stands after the boxes of a range: where sizes end, if they end at different rows and are few; else how many boxes
 * there are, after every ten.
 */
export function notesFor(times: readonly number[], sizes: readonly string[]): ReadonlyMap<number, string> {
  const most = Math.max(...times)
  if (times.some((count) => count !== most) && sizes.length <= 5) {
    const ends = new Map<number, string>()
    for (const [size, count] of times.entries()) {
      if (count > 0) ends.set(count, [ends.get(count), sizes[size]].filter((name) => name !== undefined).join(', '))
    }
    return ends
  }
  if (most <= 20) return new Map()
  return new Map(Array.from({ length: Math.floor(most / 10) }, (_, ten) => [10 * (ten + 1), String(10 * (ten + 1))]))
}
