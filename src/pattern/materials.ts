import Fraction from 'fraction.js'
import { usHook, yarnCategoryName } from '../grading/index.ts'
import { always, onceOrColumns, printMeasure, readQuantity, type Segment, textForAll, units } from '../measure/index.ts'
import type { Facts, YarnFacts } from './facts.ts'
import type { Printing } from './inlines.ts'
import type { Materials, YarnLine, YarnUse } from './pattern.ts'

/** Yarn with the amount for each size, hooks in both systems, notions. */
export function materials(facts: Facts, use: Readonly<Record<string, YarnUse>>, value: Printing['value']): Materials {
  return {
    yarn: facts.yarn.map((yarn) => yarnLine(yarn, use[yarn.as], value)),
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
    description: [category(yarn), yarn.fibre, skein(yarn)].filter((part) => part !== undefined).join(', '),
    amount: use === undefined ? null : value(amount(use)),
  }
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

/** `132 (182, 237) m [145 (199, 260) yd], 2 (2, 3) skeins`: length leads, for any yarn of the category may take its place. */
function amount({ grams, metres, skeins }: YarnUse): readonly Segment[] {
  const measure =
    metres === null
      ? printMeasure({ kind: 'mass', unit: 'g', bySize: grams.map((number) => new Fraction(number)) }, null)
      : printMeasure({ kind: 'length', unit: 'm', bySize: metres.map((number) => new Fraction(number).mul(100)) }, null)
  if (skeins === null) return measure
  return [
    ...measure,
    always(', '),
    ...onceOrColumns(skeins.map((number) => `${number} ${number === 1 ? 'skein' : 'skeins'}`)),
  ]
}
