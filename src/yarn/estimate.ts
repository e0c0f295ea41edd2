import type { PerSize } from '../measure/index.ts'
import type { Strands } from './spoken.ts'

/** A swatch that was weighed, with the yarn it holds in single crochets. */
export interface WeighedSwatch {
  readonly grams: number
  readonly units: number
}

/** A finished piece that was weighed: it beats the swatch. */
export interface WeighedSample {
  /** Position in the list of sizes. */
  readonly size: number
  /** For each yarn, null where it was not weighed. */
  readonly grams: readonly (number | null)[]
  /** What was in it, in single crochets, where that is not what the rows of its size come to now; left out where it is. */
  readonly made?: { readonly byYarn: readonly number[]; readonly whole: number }
}

/** A row with its yarn in single crochets, all its workings together. */
export interface YarnRow {
  readonly units: PerSize<number>
  readonly strands: Strands
}

/** What a yarn takes beside the rows: cords in single crochets, all else in grams. */
export interface Beside {
  readonly units: PerSize<number>
  readonly grams: PerSize<number>
}

export interface YarnQuestion {
  readonly sizes: number
  readonly rows: readonly YarnRow[]
  /** One for each yarn. */
  readonly beside: readonly Beside[]
  readonly swatch: WeighedSwatch | null
  readonly samples: readonly WeighedSample[]
}

export interface YarnEstimate {
  /** Grams of each yarn, nothing to spare; null where they can't be told apart, or nothing was weighed. */
  readonly byYarn: readonly (PerSize<number> | null)[]
  /** Grams of all yarns together; null where nothing was weighed. */
  readonly total: PerSize<number> | null
  /** The rows don't tell the yarns apart: each weighed one is taken to have the same share in every size. */
  readonly byShare: boolean
  /** What each yarn, and all of them, come to in single crochets. */
  readonly units: readonly PerSize<number>[]
  readonly whole: PerSize<number>
}

/** One amount for each size. */
type Amounts = PerSize<number>

/** Grams that the worked rows and the finish take, for each yarn and size. */
export function estimateYarn(question: YarnQuestion): YarnEstimate {
  const { rows, beside, swatch } = question
  const whole = plus(everyRow(question), ...beside.map(({ units }) => units))
  const own = beside.map((extra, yarn) => plus(ofYarn(question, yarn), extra.units))
  const byShare =
    rows.some(({ strands }) => strands === null) || own.some((units, yarn) => isNothing(units) && isIdle(beside[yarn]))
  const units = byShare ? beside.map(() => whole) : own
  const weighed = units.map((each, yarn) => weighedRate(question, yarn, each))
  const rate = byShare
    ? null
    : (commonRate(question, units, weighed) ??
      (swatch === null ? null : swatch.grams / (swatch.units * usualStrands(question))))
  const byYarn = units.map((each, yarn) => gramsOf(question, yarn, each, weighed[yarn] ?? rate))
  return { byYarn, total: totalOf(question, byYarn, whole), byShare, units, whole }
}

function plus(...all: readonly Amounts[]): Amounts {
  const [first = [], ...others] = all
  return first.map((amount, size) => others.reduce((sum, each) => sum + (each[size] ?? 0), amount))
}

const isNothing = (units: Amounts): boolean => units.every((unit) => unit === 0)

const isIdle = (extra: Beside | undefined): boolean => extra === undefined || isNothing(extra.grams)

function everyRow({ rows, sizes }: YarnQuestion): Amounts {
  return plus(new Array<number>(sizes).fill(0), ...rows.map(({ units }) => units))
}

function ofYarn({ rows, sizes }: YarnQuestion, yarn: number): Amounts {
  const own = rows.map(({ units, strands }) => units.map((unit) => unit * (strands?.[yarn] ?? 0)))
  return plus(new Array<number>(sizes).fill(0), ...own)
}

/** Grams for a single crochet of a yarn, by all samples that it was weighed in; null where it was in none. */
function weighedRate({ samples, beside }: YarnQuestion, yarn: number, units: Amounts): number | null {
  let grams = 0
  let made = 0
  for (const sample of samples) {
    const own = sample.grams[yarn] ?? null
    if (own === null) continue
    grams += Math.max(0, own - (beside[yarn]?.grams[sample.size] ?? 0))
    made += sample.made?.byYarn[yarn] ?? units[sample.size] ?? 0
  }
  return made === 0 ? null : grams / made
}

/** A yarn that was not weighed takes for a stitch what those take that were. */
function commonRate(
  { samples }: YarnQuestion,
  units: readonly Amounts[],
  rates: readonly (number | null)[],
): number | null {
  let grams = 0
  let made = 0
  for (const [yarn, rate] of rates.entries()) {
    if (rate === null) continue
    for (const { size, grams: weighed, made: own } of samples) {
      if ((weighed[yarn] ?? null) === null) continue
      const amount = own?.byYarn[yarn] ?? units[yarn]?.[size] ?? 0
      grams += rate * amount
      made += amount
    }
  }
  return made === 0 ? null : grams / made
}

/** Strands that most of the piece is worked with: the swatch is taken to be worked as the piece is. */
function usualStrands({ rows }: YarnQuestion): number {
  const units = new Map<number, number>()
  for (const row of rows) {
    const strands = row.strands?.reduce((sum, each) => sum + each, 0) ?? 1
    units.set(
      strands,
      row.units.reduce((sum, each) => sum + each, units.get(strands) ?? 0),
    )
  }
  const [[usual] = [1]] = [...units].sort(([, a], [, b]) => b - a)
  return usual || 1
}

/** What was weighed stays as it was weighed. */
function gramsOf({ samples, beside }: YarnQuestion, yarn: number, units: Amounts, rate: number | null): Amounts | null {
  const extra = beside[yarn]?.grams ?? []
  if (rate === null || (isNothing(units) && isIdle(beside[yarn]))) return null
  return units.map((unit, size) => {
    const weighed = samples.find((sample) => sample.size === size && sample.made === undefined)?.grams[yarn] ?? null
    return weighed ?? unit * rate + (extra[size] ?? 0)
  })
}

/** Where the yarns can't be told apart, all of them by the swatch, or by the samples' whole weight. */
function totalOf(
  { swatch, samples, beside }: YarnQuestion,
  byYarn: readonly (Amounts | null)[],
  whole: Amounts,
): Amounts | null {
  const known = byYarn.flatMap((grams) => (grams === null ? [] : [grams]))
  if (known.length === byYarn.length && known.length > 0) return plus(...known)
  if (isNothing(whole)) return null
  const all = samples.filter(({ grams }) => grams.every((each) => each !== null))
  const made = all.reduce((sum, sample) => sum + (sample.made?.whole ?? whole[sample.size] ?? 0), 0)
  const weight = all.reduce((sum, { grams }) => grams.reduce<number>((most, each) => most + (each ?? 0), sum), 0)
  if (made > 0) return whole.map((unit) => (unit * weight) / made)
  if (swatch === null || swatch.units === 0) return null
  const rate = swatch.grams / swatch.units
  return plus(
    whole.map((unit) => unit * rate),
    ...beside.map(({ grams }) => grams),
  )
}
