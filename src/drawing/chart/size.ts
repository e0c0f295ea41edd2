import type { PlaceKind } from '../../rows/fabric.ts'
import { heightInChains } from '../../rows/terms/stitch.ts'

/** Length of a chain, in the chart's unit, which is the room that a stitch takes in its row. */
export const chainLength = 0.8

/** What a special stitch is as high as, where nothing is known of it: a double crochet. */
const usualHeight = 3

/** How high the symbol of a stitch is: as many chains as its turning chain has; a cross needs a little room around it. */
export function heightOf(kind: PlaceKind): number {
  if (kind.what !== 'stitch' || kind.stitch === null) return usualHeight * chainLength
  const { base, style } = kind.stitch
  const chains = Math.max(heightInChains[base], 0.5) + (base === 'singleCrochet' ? 0.25 : 0)
  return (chains + (style === 'foundation' ? 1 : style === 'extended' ? 0.7 : 0)) * chainLength
}

/** How much room a place takes between its neighbours; null for a slip stitch. */
export function roomOf(kind: PlaceKind | null): number {
  if (kind === null) return 0.4
  if (kind.what === 'turning') return 0.6
  if (kind.what !== 'stitch') return 0.9
  if (kind.turning) return 0.7
  return kind.stitch === null ? 1.4 : 0.92
}

/** Chains between stitches bend outwards where there are more of them than lie straight. */
export function roomOfChains(chains: number): number {
  return 0.25 + chainLength * Math.min(chains, 2) + 0.2 * Math.max(0, Math.min(chains, 8) - 2)
}
