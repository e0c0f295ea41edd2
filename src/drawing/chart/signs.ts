import type { UsedTerm } from '../../rows/ledger.ts'
import type { Dictionary } from '../../rows/terms/dictionary.ts'
import type { Line } from '../drawing.ts'
import type { Point } from '../path.ts'
import type { Drawn } from './key.ts'
import { drawnAs } from './key.ts'
import type { Placed, Sign } from './model.ts'
import { chainLength } from './size.ts'
import type { Stage } from './stage.ts'
import { stroke } from './stage.ts'
import { drawBox, drawChain, drawClosed, drawGroup, drawPicot, drawRing, drawSlip, drawStitch } from './symbols.ts'

/** What is needed to know how a stitch is drawn. */
export interface Naming {
  readonly terms: readonly UsedTerm[]
  readonly dictionary: Dictionary
}

/** How a stitch is drawn; null for what is drawn in one way only. */
export function drawnOf({ sign, feet }: Placed, { terms, dictionary }: Naming): Drawn | null {
  if (sign.what !== 'stitch') return null
  return drawnAs(sign.kind, { feet: feet.length, loop: sign.loop, front: sign.front }, terms, dictionary)
}

/** The lines of what is placed. */
export function signLines(stage: Stage, placed: Placed, drawn: Drawn | null): readonly Line[] {
  const { sign, feet, head } = placed
  const foot = feet[0] ?? head
  if (drawn !== null) return drawnLines(stage, feet, head, drawn)
  switch (sign.what) {
    case 'chains':
      return chainLines(stage, foot, head, sign)
    case 'picot':
      return drawPicot(stage, foot, head, sign.chains)
    case 'ring':
      return drawRing(stage, head, sign.radius, sign.chains)
    case 'ground':
      return [groundLine(stage, foot, head)]
    default:
      return [drawSlip(stage, head)]
  }
}

export function drawnLines(stage: Stage, feet: readonly Point[], head: Point, drawn: Drawn): readonly Line[] {
  const foot = feet[0] ?? head
  switch (drawn.as) {
    case 'stitch':
      return drawStitch(stage, foot, head, drawn)
    case 'closed':
      return drawClosed(stage, feet, head, drawn.base)
    case 'group':
      return drawGroup(stage, foot, head, drawn)
    case 'own':
      return drawBox(stage, foot, head)
  }
}

/** A stitch of the row before: a short line under what is worked into it. */
function groundLine(stage: Stage, from: Point, to: Point): Line {
  return { ...stroke(stage, from, to), look: 'thin' }
}

function onCurve(from: Point, bend: Point, to: Point, part: number): Point {
  const [a, b, c] = [(1 - part) ** 2, 2 * part * (1 - part), part ** 2]
  return { x: a * from.x + b * bend.x + c * to.x, y: a * from.y + b * bend.y + c * to.y }
}

/** So many chains on their way, each its length; where there is too little way they lie closer. */
function chainLines(stage: Stage, from: Point, to: Point, sign: Sign & { readonly what: 'chains' }): readonly Line[] {
  const bend = sign.bend ?? { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }
  const way = Math.hypot(to.x - from.x, to.y - from.y)
  // Chains shorter than their way lie in its middle.
  const share = sign.bend === null ? Math.min(1, (sign.count * chainLength) / Math.max(way, 0.01)) : 1
  return Array.from({ length: sign.count }, (_, index) => {
    const part = 0.5 + ((index + 0.5) / sign.count - 0.5) * share
    const [before, after] = [onCurve(from, bend, to, part - 0.02), onCurve(from, bend, to, part + 0.02)]
    return drawChain(stage, onCurve(from, bend, to, part), { x: after.x - before.x, y: after.y - before.y })
  })
}
