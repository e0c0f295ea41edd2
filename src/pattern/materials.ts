import Fraction from 'fraction.js'
import { usHook, yarnCategoryName, yarnCategoryNumber } from '../grading/index.ts'
import {
  always,
  columns,
  onceOrColumns,
  type PerSize,
  printMeasure,
  readQuantity,
  type Segment,
  textForAll,
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
    description: [category(yarn), yarn.fibre, skein(yarn)].filter((part) => part !== undefined).join(', '),
    amount: use === undefined ? null : value(amount(use, yarn)),
  }
}

function categoryNumber({ category }: YarnFacts): number | null {
  return typeof category === 'string' ? yarnCategoryNumber(category) : (category ?? null)
}

function category({ category }: YarnFacts): string | undefined {
  if (typeof category !== 'number') return category
  const name = yarnCategoryName(category)
  return name === null ? `category ${category}` : `${name} (category ${category})`
}

function skein({ skein }: YarnFacts): string | undefined {
  const parts = [skein?.weight, skein?.length].flatMap((text) => (text === undefined ? [] : [inBothSystems(text)]))
  return parts.length === 0 ? undefined : `${parts.join(' = ')} a skein`
}

/** `10 cm (4 in)`; what is no measure stays as it was written. */
export function inBothSystems(text: string): string {
  const quantity = readQuantity(text)
  if (quantity === null) return text
  const { kind } = units[quantity.unit]
  return textForAll(printMeasure({ kind, unit: quantity.unit, bySize: [quantity.base] }, null))
}

/**
 * `132 (182, 237) m [145 (200, 260) yd], 120 (165, 215) g; 2 (2, 3) skeins with 10 % to spare`: length leads, for any
 * yarn of the category may take its place, and mass follows from it.
 */
function amount(use: YarnUse, { skein }: YarnFacts): readonly Segment[] {
  const { grams, metres, yards, skeins, margin } = use
  const inYards = readQuantity(skein?.length ?? '')?.unit === 'yd'
  const weight = { kind: 'mass', unit: 'g', bySize: fractions(grams) } as const
  const first =
    metres === null || yards === null
      ? printMeasure(weight, null)
      : [
          ...(inYards ? inBoth(yards, 'yd', metres, 'm') : inBoth(metres, 'm', yards, 'yd')),
          always(', '),
          ...onceOrColumns(grams.map(String)),
          always(' g'),
        ]
  if (skeins === null) return first
  const whole = { kind: 'count', unit: null, bySize: fractions(skeins) } as const
  const spare = margin === 0 ? '' : ` with ${margin} % to spare`
  return [...first, always('; '), ...printMeasure(whole, { kind: 'skeins' }), always(spare)]
}

const fractions = (numbers: PerSize<number>): PerSize<Fraction> => numbers.map((number) => new Fraction(number))

/** Each already rounded up in its own unit, so that neither falls short. */
function inBoth(first: PerSize<number>, unit: string, second: PerSize<number>, other: string): readonly Segment[] {
  if (new Set(first).size === 1 && new Set(second).size === 1)
    return [always(`${first[0]} ${unit} (${second[0]} ${other})`)]
  return [...columns(first.map(String)), always(` ${unit} [`), ...columns(second.map(String)), always(` ${other}]`)]
}

/** What may be bought instead, where lengths are known to go by. */
function yarnNote({ yarn }: Facts, use: Readonly<Record<string, YarnUse>>): string | null {
  const told = yarn.filter(({ as }) => (use[as]?.metres ?? null) !== null)
  const categories = new Set(told.map(({ category }) => category))
  const [own] = told
  if (own?.category === undefined) return null
  const which = categories.size === 1 ? `Any ${category(own)} yarn` : 'Any yarn of the same category'
  return `${which} that gives the gauge will do: go by its length, and its weight follows.`
}
