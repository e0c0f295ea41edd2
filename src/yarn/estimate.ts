import type { PerSize } from '../measure/index.ts'
import type { LedgerRow } from '../rows/ledger.ts'
import { type Dictionary, dictionaryFor } from '../rows/terms/dictionary.ts'
import { chainUse, stitchUse } from './use.ts'

/** A swatch that was weighed. */
export interface WeighedSwatch {
  /** Stitches in the whole swatch, by its size and gauge. */
  readonly stitches: number
  readonly grams: number
  /** The stitch it was worked in, in the draft's terms; null for a stitch pattern. */
  readonly stitch: string | null
}

/** A finished piece that was weighed: it beats the swatch. */
export interface WeighedSample {
  /** Position in the list of sizes. */
  readonly size: number
  readonly grams: number
}

export interface YarnQuestion {
  readonly rows: readonly LedgerRow[]
  readonly terms: 'us' | 'uk'
  readonly sizes: number
  readonly swatch: WeighedSwatch | null
  readonly sample: WeighedSample | null
}

/** Grams that the worked rows take, for each size, nothing to spare; null where neither swatch nor sample was weighed. */
export function estimateGrams(question: YarnQuestion): PerSize<number> | null {
  const units = Array.from({ length: question.sizes }, (_, size) => unitsOf(question, size))
  const perUnit = gramsPerUnit(question, units)
  return perUnit === null || units.every((unit) => unit === 0) ? null : units.map((unit) => unit * perUnit)
}

function gramsPerUnit({ rows, terms, swatch, sample }: YarnQuestion, units: PerSize<number>): number | null {
  if (sample !== null) {
    const made = units[sample.size] ?? 0
    return made === 0 ? null : sample.grams / made
  }
  if (swatch === null || swatch.stitches === 0) return null
  const stitch = swatch.stitch === null ? undefined : dictionaryFor(terms).stitches.get(swatch.stitch.toLowerCase())
  const use = stitch === undefined ? averageUse(rows, terms) : stitchUse(stitch)
  return swatch.grams / (swatch.stitches * use)
}

/** Yarn that a size takes, in single crochets. */
function unitsOf({ rows, terms }: YarnQuestion, size: number): number {
  const dictionary = dictionaryFor(terms)
  let units = 0
  for (const row of rows) {
    const times = timesMade(row.piece)
    for (const [kind, counts] of Object.entries(row.counts))
      units += times * (counts[size] ?? 0) * useOf(kind, dictionary)
  }
  return units
}

const numbers: Readonly<Record<string, number>> = {
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  eight: 8,
  ten: 10,
  twelve: 12,
}

/** `Sleeve (make 2)`: a piece is made once unless its heading says otherwise. */
export function timesMade(piece: string): number {
  const said = /\bmake\s+(\d{1,3}|[a-z]+)\b/i.exec(piece)?.[1]?.toLowerCase() ?? ''
  return numbers[said] ?? (Number(said) || 1)
}

/** A swatch of a stitch pattern is the same mixture as the piece: its stitch is the piece's average one. */
function averageUse(rows: readonly LedgerRow[], terms: 'us' | 'uk'): number {
  const dictionary = dictionaryFor(terms)
  let units = 0
  let stitches = 0
  for (const row of rows) {
    for (const [kind, counts] of Object.entries(row.counts)) units += (counts[0] ?? 0) * useOf(kind, dictionary)
    stitches += row.total[0] ?? 0
  }
  return stitches === 0 ? 1 : units / stitches
}

/**
 * A space of n chains takes n chains' yarn. Special stitches are left out: what they are made of is
 * counted by its own kinds.
 */
function useOf(kind: string, dictionary: Dictionary): number {
  const space = /^ch-(\d+) sp$/.exec(kind)
  if (space !== null) return Number(space[1]) * chainUse
  if (kind === 'ch') return chainUse
  const stitch = dictionary.stitches.get(kind.toLowerCase())
  return stitch === undefined ? 0 : stitchUse(stitch)
}
