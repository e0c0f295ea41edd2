import { type BaseStitch, heightInChains, type Stitch } from '../rows/terms/stitch.ts'

/**
 * Yarn that a stitch takes, as a share of a single crochet made with the same yarn and hook.
 * Common practice, no source: makers' own measurements differ by a tenth or more. The swatch's weight, and
 * a weighed sample above all, set the scale; these shares matter only where a piece mixes kinds.
 */
export const chainUse = 0.45

const useByBase: Readonly<Record<BaseStitch, number>> = {
  slipStitch: 0.5,
  singleCrochet: 1,
  halfDoubleCrochet: 1.35,
  doubleCrochet: 1.7,
  treble: 2.15,
  doubleTreble: 2.6,
  tripleTreble: 3.05,
}

/** A stitch round a post goes a longer way; a foundation stitch makes its own chain. */
const extraByStyle: Readonly<Record<Stitch['style'], number>> = {
  plain: 0,
  frontPost: 0.1,
  backPost: 0.1,
  extended: 0.3,
  foundation: chainUse,
}

export function stitchUse({ base, style }: Stitch): number {
  return useByBase[base] + extraByStyle[style]
}

/** A slip stitch is no taller than its loop: a cord of them takes its chain and this. */
export const slipStitchUse = useByBase.slipStitch

/** A further stitch closed with another, as in `dc3tog`: whole but for the last loop, which they share. */
export function legUse(stitch: Stitch): number {
  return heightInChains[stitch.base] === 0 ? 0 : stitchUse(stitch) - chainUse
}

/**
 * A puff, bobble, cluster or popcorn that a draft does not spell out stitch by stitch: taken as three double crochets
 * closed as one. Common practice, no source.
 */
export const closedAsOneUse = 3 * (useByBase.doubleCrochet - chainUse) + chainUse
