import qrcode from 'qrcode-generator'
import type { Artwork } from './artwork.ts'
import { filled } from './operators.ts'

/** Light modules that a reader wants around a code (ISO/IEC 18004, 6.3.8); the code's margin of them is part of its size. */
const quiet = 4

/** A QR code of an address as vectors, with an error correction of 15 %; `side` in points. */
export function qrArtwork(address: string, side: number, colour: string): Artwork {
  const modules = modulesOf(address)
  const module = side / (modules.length + 2 * quiet)
  const rectangles = modules.flatMap((row, y) =>
    runsOf(row).map(([start, end]) => [start + quiet, y + quiet, end - start, 1].map((part) => part * module)),
  )
  return {
    width: side,
    height: side,
    alt: `QR code that leads to ${address}`,
    draw: (pen, tag, x, y) => pen.drawing(filled(rectangles, colour), 1, tag, { x, y, width: side, height: side }),
  }
}

type Modules = readonly (readonly boolean[])[]

const known = new Map<string, Modules>()

/** The print-outs of a pattern all lead to one page. */
const mostKnown = 32

function modulesOf(address: string): Modules {
  const before = known.get(address)
  if (before !== undefined) return before
  if (known.size >= mostKnown) known.clear()
  const modules = makeModules(address)
  known.set(address, modules)
  return modules
}

function makeModules(address: string): Modules {
  const code = qrcode(0, 'M')
  code.addData(String.fromCharCode(...new TextEncoder().encode(address)), 'Byte')
  code.make()
  const side = Array.from({ length: code.getModuleCount() }, (_, index) => index)
  return side.map((row) => side.map((column) => code.isDark(row, column)))
}

/** Dark stretches of a row of modules: the first module and the one after the last. */
function runsOf(row: readonly boolean[]): readonly (readonly [start: number, end: number])[] {
  const edges = row.flatMap((dark, index) => (dark === (row[index - 1] ?? false) ? [] : [index]))
  const ends = edges.length % 2 === 0 ? edges : [...edges, row.length]
  return Array.from({ length: ends.length / 2 }, (_, run) => [ends[2 * run] ?? 0, ends[2 * run + 1] ?? 0])
}
