import type { Range, YarnWeight } from '../standards/yarn-weights.ts'
import { yarnWeights } from '../standards/yarn-weights.ts'

function plain(name: string): string {
  return name
    .toLowerCase()
    .replace(/[\s-]+/g, ' ')
    .trim()
}

/** Every name of a yarn category, published or of the trade, in lower case, the longest first. */
export const yarnNames: readonly string[] = [
  ...new Set(yarnWeights.flatMap(({ name, otherNames }) => [name, ...otherNames].map(plain))),
].sort((a, b) => b.length - a.length)

/** The categories that a name stands for: `fingering` is 0 and 1. */
export function categoriesNamed(name: string): readonly number[] {
  return yarnWeights
    .filter((weight) => [weight.name, ...weight.otherNames].map(plain).includes(plain(name)))
    .map(({ category }) => category)
}

/** What is published for a category; where two versions circulate, what either allows. */
export interface PublishedYarn {
  readonly name: string
  /** Stitches over 4 in or 10 cm, which the trade takes as the same. */
  readonly gauge: Range
  /** What the gauge is counted in. */
  readonly stitch: YarnWeight['gauge']['stitch']
  readonly hookMm: Range
}

export function publishedYarn(category: number): PublishedYarn | null {
  const found = yarnWeights.find((weight) => weight.category === category)
  if (found === undefined) return null
  const { name, gauge, hookMm, older } = found
  return {
    name,
    stitch: gauge.stitch,
    gauge: widest(gauge, older?.gauge),
    hookMm: widest(hookMm, older?.hookMm),
  }
}

function widest(own: Range, other: Range = own): Range {
  return {
    min: own.min === null || other.min === null ? null : Math.min(own.min, other.min),
    max: own.max === null || other.max === null ? null : Math.max(own.max, other.max),
  }
}

/** Whether an amount is in a range, or beyond it by no more than an allowance at that end. */
export function isWithin({ min, max }: Range, amount: number, allowed: (end: number) => number): boolean {
  return (min === null || amount >= min - allowed(min)) && (max === null || amount <= max + allowed(max))
}
