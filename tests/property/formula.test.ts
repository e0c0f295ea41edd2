import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { printExpression, readFormula, readGrading } from '../../src/formula/index.ts'
import { tokenize } from '../../src/formula/token.ts'
import type { Direction } from '../../src/measure/index.ts'
import { fromBase, isWhole, roundToMultiple, toBase } from '../../src/measure/index.ts'
import { environment, sheet, show } from '../formula/workbench.ts'
import { anyText, expression, withoutPlaces } from './formula-tree.ts'

const runs = { seed: 20260314, numRuns: 500 }

describe('laws of the formula language', () => {
  it('tokens tile the input', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const tokens = tokenize(text, 7)
        expect(tokens.map((token) => token.text).join('')).toBe(text)
        let end = 7
        for (const { at } of tokens) {
          expect(at.start).toBe(end)
          end = at.end
        }
        expect(end).toBe(text.length + 7)
      }),
      runs,
    )
  })

  it('reading what was printed gives the same tree', () => {
    fc.assert(
      fc.property(expression, (tree) => {
        const { value, diagnostics } = readFormula(printExpression(tree), 0)
        expect(diagnostics).toEqual([])
        expect(withoutPlaces(value?.expression)).toEqual(withoutPlaces(tree))
      }),
      runs,
    )
  })

  it('no text throws, and every finding stands within the text', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const found = [...sheet(text).diagnostics, ...show(text, 'a = 3\nb = [1, 2, 3] cm').diagnostics]
        for (const { at } of found) {
          expect(at.start).toBeGreaterThanOrEqual(0)
          expect(at.start).toBeLessThanOrEqual(at.end)
          expect(at.end).toBeLessThanOrEqual(text.length)
        }
      }),
      { ...runs, numRuns: 2000 },
    )
  })

  it('a formula that is sound in every part calculates without a throw', () => {
    fc.assert(
      fc.property(expression, (tree) => {
        show(printExpression(tree), 'rim = 52 cm\nrim_sts = [1, 2, 3]\neven = 2')
      }),
      runs,
    )
  })

  it('a line that cannot be read does not disturb its neighbours', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const line = text.replace(/[\r\n]/g, ' ')
        const { value } = readGrading(`first = 1\n${line}\nlast = 2`, 0)
        expect(value.at(0)).toMatchObject({ kind: 'define', name: 'first' })
        expect(value.at(-1)).toMatchObject({ kind: 'define', name: 'last' })
      }),
      runs,
    )
  })
})

interface Written {
  readonly all: string
  readonly single: readonly [string, string, string]
}

function both(parts: readonly Written[], join: (...texts: string[]) => string): Written {
  const pick = (size: 0 | 1 | 2) => join(...parts.map((part) => part.single[size]))
  return { all: join(...parts.map((part) => part.all)), single: [pick(0), pick(1), pick(2)] }
}

const numbers: fc.Arbitrary<Written> = fc
  .tuple(fc.integer({ min: -9, max: 60 }), fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 60 }))
  .map(([a, b, c]) => ({ all: `[${a}, ${b}, ${c}]`, single: [`(${a})`, `(${b})`, `(${c})`] }))

const calculation = fc.letrec<{ tree: Written }>((tie) => {
  const two = fc.tuple(tie('tree'), tie('tree'))
  return {
    tree: fc.oneof(
      { maxDepth: 3 },
      numbers,
      fc.integer({ min: 0, max: 9 }).map((n): Written => ({ all: `${n}`, single: [`${n}`, `${n}`, `${n}`] })),
      fc
        .tuple(two, fc.constantFrom('+', '-', '*', '/'))
        .map(([pair, sign]) => both(pair, (a, b) => `(${a} ${sign} ${b})`)),
      fc
        .tuple(two, fc.constantFrom('min', 'max', 'sum'))
        .map(([pair, name]) => both(pair, (a, b) => `${name}(${a}, ${b})`)),
      fc
        .tuple(two, fc.constantFrom('', ' up', ' down'))
        .map(([pair, way]) => both(pair, (a, b) => `(${a} as multiple of (abs(${b} as whole) + 1)${way})`)),
      fc
        .tuple(tie('tree'), tie('tree'), tie('tree'))
        .map((parts) => both(parts, (a, b, c) => `if(${a} < ${b}, ${b}, ${c})`)),
      two.map((pair) => both(pair, (a, b) => `if(${b} = 0, ${a}, ${a} / ${b})`)),
    ),
  }
}).tree

describe('laws of calculation', () => {
  const oneSize = environment({ sizes: ['One'], body: null })

  it('all sizes at once give what each size gives alone', () => {
    fc.assert(
      fc.property(calculation, ({ all, single }) => {
        const together = sheet(`a = ${all}`).settled.values.get('a')?.bySize
        const alone = single.map((text) => sheet(`a = ${text}`, oneSize).settled.values.get('a')?.bySize[0])
        const expected = alone.includes(undefined) ? undefined : alone.map(String)
        expect(together?.map(String)).toEqual(expected)
      }),
      runs,
    )
  })

  it('a unit there and back is exact', () => {
    const unit = fc.constantFrom('mm', 'cm', 'm', 'in', 'yd', 'g', 'kg', 'oz', 'lb')
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 1, max: 1000 }), unit, (above, below, name) => {
        const amount = new Fraction(above, below)
        expect(fromBase(toBase(amount, name), name).equals(amount)).toBe(true)
      }),
      runs,
    )
  })

  it('a multiple of N + K is K more than a multiple of N, and the nearest; halfway goes up', () => {
    const numerator = fc.integer({ min: -5000, max: 5000 })
    const direction = fc.constantFrom<Direction>('nearest', 'up', 'down')
    const below = fc.integer({ min: 1, max: 40 })
    fc.assert(
      fc.property(
        numerator,
        below,
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: -50, max: 50 }),
        direction,
        (above, below, n, k, way) => {
          const value = new Fraction(above, below)
          const result = roundToMultiple(value, new Fraction(n), new Fraction(k), way)
          expect(isWhole(result.sub(k).div(n))).toBe(true)
          const distance = result.sub(value)
          if (way === 'nearest') expect(distance.gt(new Fraction(-n, 2)) && distance.lte(new Fraction(n, 2))).toBe(true)
          if (way === 'up') expect(distance.gte(0) && distance.lt(n)).toBe(true)
          if (way === 'down') expect(distance.lte(0) && distance.gt(-n)).toBe(true)
        },
      ),
      runs,
    )
  })
})
