import Fraction from 'fraction.js'
import { usHook, yarnCategoryName, yarnCategoryNumber } from '../grading/index.ts'
import {
  always,
  inBothSystems,
  onceOrColumns,
  type PerSize,
  printMeasure,
  readQuantity,
  type Segment,
  units,
} from '../measure/index.ts'
import type { Facts, YarnFacts } from './facts.ts'
import type { Printing } from './inlines.ts'
import type { Materials, YarnLine, YarnUse } from './pattern.ts'

/** Yarn with the amount for each size, hooks in both systems, notions. */
export function materials(facts: Facts, use: Readonly<Record<string, YarnUse>>, value: Printing['value']): Materials {
  return {
    yarn: facts.yarn.map((yarn) => yarnLine(yarn, use[yarn.as], value)),
    yarnNote: yarnNote(facts, use),
    hooks: facts.hooks.map(hookText),
    notions: facts.notions,
  }
}

/** `6.5 mm (US K-10½)`; a hook that is not on the published list stays as it was written. */
export function hookText(written: string): string {
  const size = readQuantity(written)
  const us = size?.unit === 'mm' ? usHook(size.amount.valueOf()) : null
  return us === null ? written : `${written} (US ${us})`
}

function yarnLine(yarn: YarnFacts, use: YarnUse | undefined, value: Printing['value']): YarnLine {
  return {
    as: yarn.as,
    category: categoryNumber(yarn),
    description: describe(yarn),
    amount: use === undefined ? null : value(amount(use, yarn)),
  }
}

function categoryNumber({ category }: YarnFacts): number | null {
  return typeof category === 'string' ? yarnCategoryNumber(category) : (category ?? null)
}

/** `Medium (category 4), wool, 100 g (3½ oz) = 200 m (219 yd) a skein` */
function describe({ category, fibre, skein }: YarnFacts): readonly Segment[] {
  const measures = [skein?.weight, skein?.length].flatMap((text) => (text === undefined ? [] : [inBoth(text)]))
  const parts = [categoryWords(category), fibre].flatMap((text) => (text === undefined ? [] : [[always(text)]]))
  const length = measures.length === 0 ? [] : [[...between(measures, ' = '), always(' a skein')]]
  return between([...parts, ...length], ', ')
}

/** Words with a mark between each two of them. */
export function between(parts: readonly (readonly Segment[])[], mark: string): readonly Segment[] {
  return parts.flatMap((part, index) => (index === 0 ? part : [always(mark), ...part]))
}

function categoryWords(category: YarnFacts['category']): string | undefined {
  if (typeof category !== 'number') return category
  const name = yarnCategoryName(category)
  return name === null ? `category ${category}` : `${name} (category ${category})`
}

/** `10 cm (4 in)`; what is no measure stays as it was written. */
export function inBoth(text: string): readonly Segment[] {
  const quantity = readQuantity(text)
  if (quantity === null) return [always(text)]
  const { kind } = units[quantity.unit]
  return printMeasure({ kind, unit: quantity.unit, bySize: [quantity.base] }, null)
}

/**
 * `132 (182, 237) m [145 (200, 260) yd], 120 (165, 215) g; 2 (2, 3) skeins with 10 % to spare`: length leads, for any
 * yarn of the category may take its place, and mass follows from it. Metres and yards are each rounded up already, so
 * that neither falls short.
 */
function amount(use: YarnUse, { skein }: YarnFacts): readonly Segment[] {
  const { grams, skeins, margin } = use
  const weight = { kind: 'mass', unit: 'g', bySize: fractions(grams) } as const
  const length = lengthOf(use, readQuantity(skein?.length ?? '')?.unit === 'yd')
  const first =
    length === null
      ? printMeasure(weight, null)
      : [...length, always(', '), ...onceOrColumns(grams.map(String)), always(' g')]
  if (skeins === null) return first
  const whole = { kind: 'count', unit: null, bySize: fractions(skeins) } as const
  const spare = margin === 0 ? '' : ` with ${margin} % to spare`
  return [...first, always('; '), ...printMeasure(whole, { kind: 'skeins' }), always(spare)]
}

const fractions = (numbers: PerSize<number>): PerSize<Fraction> => numbers.map((number) => new Fraction(number))

function lengthOf({ metres, yards }: YarnUse, yardsFirst: boolean): readonly Segment[] | null {
  if (metres === null || yards === null) return null
  const [m, yd] = [metres.map(String), yards.map(String)]
  return yardsFirst ? inBothSystems(yd, 'yd', m, 'm') : inBothSystems(m, 'm', yd, 'yd')
}

/** What may be bought instead, where lengths are known to go by. */
function yarnNote({ yarn }: Facts, use: Readonly<Record<string, YarnUse>>): string | null {
  const told = yarn.filter(({ as }) => (use[as]?.metres ?? null) !== null)
  const categories = new Set(told.map(({ category }) => category))
  const [own] = told
  if (own?.category === undefined) return null
  const which = categories.size === 1 ? `Any ${categoryWords(own.category)} yarn` : 'Any yarn of the same category'
  return `${which} that gives the gauge will do: go by its length, and its weight follows.`
}
