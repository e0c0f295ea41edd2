import { chainUse, slipStitchUse } from './use.ts'

/*
 * Yarn of what is not worked in rows. The geometry is common practice, no source: makers cut fringes twice their
 * length and a little for the knot, twist cords from three times theirs, and weigh pompoms after trimming them.
 */

/** What a draft says of a cord, a fringe, a pompom or a tassel in one size; lengths in centimetres, null where it says nothing. */
export interface Finishing {
  readonly kind: string
  readonly length: number | null
  readonly across: number | null
  readonly strands: number | null
  readonly stitches: number | null
  readonly wraps: number | null
  readonly weight: number | null
  readonly count: number | null
  readonly worked: 'chain' | 'slip stitch' | 'twisted' | null
}

/** Yarn as single crochets (scaled by the piece's own weight), as a length in centimetres, or as grams. */
export interface FinishYarn {
  readonly units: number
  readonly centimetres: number
  readonly grams: number
}

export const noFinish: FinishYarn = { units: 0, centimetres: 0, grams: 0 }

/** For the knot that holds a strand of fringe, over both its halves. */
const knot = 2
/** For the loop and the wrapping of a tassel. */
const tie = 40
/** Cut length of a twisted cord: folded once, and half as much again for the twist. */
const twisted = 3
/** Yarn in a chain that is worked alone, where no gauge tells its stitches. */
const chained = 4
/** A pompom of 6 cm weighs about 9 g, the trimmings included. */
const pompomDensity = 0.08

type Amount = Partial<FinishYarn>

/** What one of a kind takes, or the word that is missing to tell. */
const kinds: Readonly<Record<string, (own: Finishing, perCentimetre: number | null) => Amount | string>> = {
  cord: cordYarn,
  tie: cordYarn,
  fringe: ({ length, strands }) => {
    if (length === null) return 'length'
    return strands === null ? 'strands' : { centimetres: strands * (2 * length + knot) }
  },
  tassel: ({ length, wraps, strands }) => {
    if (length === null) return 'length'
    const wound = wraps ?? strands
    return wound === null ? 'wraps' : { centimetres: wound * 2 * length + tie }
  },
  pompom: ({ across, wraps }) => {
    if (across === null) return 'across'
    if (wraps !== null) return { centimetres: wraps * 2 * across }
    return { grams: (pompomDensity * Math.PI * across ** 3) / 6 }
  },
}

function cordYarn({ length, stitches, strands, worked }: Finishing, perCentimetre: number | null): Amount | string {
  const together = strands ?? (worked === 'twisted' ? 2 : 1)
  if (worked === 'twisted') return length === null ? 'length' : { centimetres: twisted * length * together }
  const made = stitches ?? (length === null || perCentimetre === null ? null : length * perCentimetre)
  const use = chainUse + (worked === 'slip stitch' ? slipStitchUse : 0)
  if (made !== null) return { units: made * use * together }
  return length === null ? 'length' : { centimetres: (length * chained * together * use) / chainUse }
}

/**
 * Yarn of one thing that a piece carries, for one size, all of its `count`. A thing of any other name takes the
 * `length` or `weight` of yarn that is given for it. A text: the word that is missing.
 *
 * @param perCentimetre stitches of the swatch in a centimetre; null where it does not say
 */
export function finishYarn(own: Finishing, perCentimetre: number | null): FinishYarn | string {
  const one = own.weight !== null ? { grams: own.weight } : oneOf(own, perCentimetre)
  if (typeof one === 'string') return one
  const times = own.count ?? 1
  const { units = 0, centimetres = 0, grams = 0 } = one
  return { units: units * times, centimetres: centimetres * times, grams: grams * times }
}

function oneOf(own: Finishing, perCentimetre: number | null): Amount | string {
  const kind = kinds[own.kind.toLowerCase().replace(/s$/, '')]
  if (kind !== undefined) return kind(own, perCentimetre)
  return own.length === null ? 'length' : { centimetres: own.length }
}
