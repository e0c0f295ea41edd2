import type { Drawing, KeyEntry, Line } from '../drawing.ts'
import type { Point } from '../path.ts'
import type { Charted } from './chart.ts'
import type { Drawn } from './key.ts'
import { keyOf, wordsFor } from './key.ts'
import type { Placed } from './model.ts'
import { arrow, text } from './numbers.ts'
import type { Naming } from './signs.ts'
import { drawnLines, drawnOf } from './signs.ts'
import { chainLength, heightOf } from './size.ts'
import type { Stage } from './stage.ts'
import { drawChain, drawPicot, drawRing, drawSlip } from './symbols.ts'

export interface Entry {
  readonly key: string
  readonly placed: Placed
  readonly drawn: Drawn | null
}

export function entriesOf(placed: readonly Placed[], naming: Naming): ReadonlyMap<string, Entry> {
  const entries = new Map<string, Entry>()
  for (const each of placed) {
    const drawn = drawnOf(each, naming)
    const key = keyOf(each, drawn)
    if (!entries.has(key)) entries.set(key, { key, placed: each, drawn })
  }
  return entries
}

/** Numbers of the stitches that are the pattern's own, by their key. */
export function ownNumbers(entries: ReadonlyMap<string, Entry>): ReadonlyMap<string, number> {
  const own = [...entries.values()].filter(({ drawn }) => drawn?.as === 'own')
  return new Map(own.map(({ key }, index) => [key, index + 1]))
}

const keyScale = 9

/** A symbol upright, alone. */
function sample({ placed, drawn }: Entry, number: number | null): Drawing {
  const { sign } = placed
  const legs = drawn?.as === 'closed' ? drawn.legs : 1
  const high = sign.what === 'stitch' ? heightOf(sign.kind) : chainLength
  const wide = Math.max(1.2, legs * 0.9)
  const point = ({ x, y }: Point): Point => ({ x: (x + wide / 2 + 0.3) * keyScale, y: (high + 0.45 - y) * keyScale })
  const stage: Stage = { point, scale: keyScale }
  const feet = Array.from({ length: legs }, (_, leg) => ({ x: (leg - (legs - 1) / 2) * 0.9, y: 0 }))
  const head = { x: 0, y: high }
  const labels = number === null ? [] : [text(String(number), point({ x: 0, y: high / 2 }), 'middle', 6.5)]
  const lines = drawn === null ? plainSample(stage, placed) : drawnLines(stage, feet, head, drawn)
  return { width: (wide + 0.6) * keyScale, height: (high + 0.9) * keyScale, lines, labels }
}

function plainSample(stage: Stage, { sign }: Placed): readonly Line[] {
  const centre = { x: 0, y: chainLength / 2 }
  if (sign.what === 'chains') return [drawChain(stage, centre, { x: 1, y: 0 })]
  if (sign.what === 'picot') return drawPicot(stage, { x: 0, y: -0.25 }, { x: 0, y: 1 }, sign.chains)
  if (sign.what === 'ring') return drawRing(stage, centre, 0.5, 0)
  return [drawSlip(stage, centre)]
}

function plainWords({ sign }: Placed): string | null {
  switch (sign.what) {
    case 'chains':
      return 'ch: chain'
    case 'slip':
      return 'sl st: slip stitch'
    case 'picot':
      return 'picot'
    case 'ring':
      return sign.chains === 0 ? 'ring' : null
    default:
      return null
  }
}

/** Whether rows are worked with the wrong side facing. */
function hasWrongSide(placed: readonly Placed[]): boolean {
  return placed.some(({ sign }) => sign.what === 'stitch' && !sign.front)
}

/** What the arrows say: in which direction each side is worked, where the draft tells the sides. */
function directionEntry({ laid, rows }: Charted): KeyEntry {
  const stage: Stage = { point: ({ x, y }) => ({ x: x * keyScale, y: y * keyScale }), scale: keyScale }
  const lines = arrow(stage, { x: 1.2, y: 0.5 }, { x: 0.3, y: 0.5 })
  const last = laid.rows.at(-1)
  const turned = last?.round !== null && hasWrongSide(laid.placed)
  const sides = last?.round === null && rows.some(({ side }) => side !== null) && hasWrongSide(laid.placed)
  const which = turned ? ` of ${rows.at(-1)?.name ?? ''}` : sides ? ': RS rows from right to left' : ''
  return { symbol: { width: 1.5 * keyScale, height: keyScale, lines, labels: [] }, words: `direction of work${which}` }
}

/** The key: each symbol once, in the order in which they come, and the arrow. */
export function keyEntries(
  entries: ReadonlyMap<string, Entry>,
  own: ReadonlyMap<string, number>,
  charted: Charted,
): KeyEntry[] {
  const turns = hasWrongSide(charted.laid.placed)
  const symbols = [...entries.values()].flatMap((entry): KeyEntry[] => {
    const { dictionary } = charted.naming
    const words = entry.drawn === null ? plainWords(entry.placed) : wordsFor(entry.drawn, turns, dictionary)
    return words === null ? [] : [{ symbol: sample(entry, own.get(entry.key) ?? null), words }]
  })
  return [...symbols, directionEntry(charted)]
}
