import { readQuantity, units } from '../measure/index.ts'
import type { Ledger } from '../rows/ledger.ts'
import { estimateGrams, type WeighedSample, type WeighedSwatch } from '../yarn/estimate.ts'
import { swatchSides } from './check-facts.ts'
import type { Draft } from './draft.ts'
import type { Facts } from './facts.ts'
import type { Graded } from './grade.ts'
import type { YarnUse } from './pattern.ts'

/** A tenth more than the piece takes: for ends, a looser hand, and the swatch itself. Common practice, no source. */
const margin = 1.1

/**
 * Yarn for each size, by the yarn's name; empty where it can't be told: nothing was weighed, a row was not
 * worked, or the rows share several yarns.
 */
export function yarnUse(draft: Draft, graded: Graded, ledger: Ledger): Record<string, YarnUse> {
  const { facts } = draft.facts
  const [yarn, another] = facts.yarn
  if (yarn === undefined || another !== undefined || ledger.rows.some((row) => row.status !== 'worked')) return {}
  const grams = estimateGrams({
    rows: ledger.rows,
    terms: facts.terms,
    sizes: facts.sizes.length,
    swatch: weighedSwatch(facts, graded),
    sample: weighedSample(facts, yarn.as),
  })
  if (grams === null) return {}
  const weight = grammes(yarn.skein?.weight)
  const metres = lengthOf(yarn.skein?.length)
  return {
    [yarn.as]: {
      grams: grams.map(upward),
      metres: weight === null || metres === null ? null : grams.map((gram) => upward((gram / weight) * metres)),
      skeins: weight === null ? null : grams.map((gram) => upward((gram * margin) / weight)),
    },
  }
}

/** Rounded up, so that there is never too little; a millionth is the arithmetic's, not the yarn's. */
function upward(amount: number): number {
  return Math.ceil(amount - 1e-6)
}

function weighedSwatch({ swatch }: Facts, { environment }: Graded): WeighedSwatch | null {
  const written = Object.values(swatch)[0]
  const grams = grammes(written?.weight)
  const sides = swatchSides(written?.size ?? '')
  const found = environment.gauge(null)
  if (grams === null || sides === null || found.kind !== 'found') return null
  const { stitches, rows } = found.gauge
  if (stitches === null || rows === null) return null
  const [width, height] = sides
  const count = stitches.valueOf() * width * rows.valueOf() * height
  return { stitches: count, grams, stitch: written?.in ?? null }
}

function weighedSample({ sample, sizes }: Facts, yarn: string): WeighedSample | null {
  const grams = grammes(sample?.used[yarn])
  const size = sizes.indexOf(sample?.size ?? '')
  return grams === null || size === -1 ? null : { size, grams }
}

function grammes(text: string | undefined): number | null {
  return baseOf(text, 'mass')
}

function lengthOf(text: string | undefined): number | null {
  const centimetres = baseOf(text, 'length')
  return centimetres === null ? null : centimetres / 100
}

/** Grams or centimetres; null where the text is no measure of that kind. */
function baseOf(text: string | undefined, kind: 'mass' | 'length'): number | null {
  const quantity = text === undefined ? null : readQuantity(text)
  return quantity !== null && units[quantity.unit].kind === kind ? quantity.base.valueOf() : null
}
