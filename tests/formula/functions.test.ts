import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { functions } from '../../src/formula/index.ts'
import { body, environment, gauge, printed } from './workbench.ts'

const facts = environment({
  sizes: ['S', 'L'],
  swatches: [{ name: null, gauge: gauge('12 per 10 cm', '8 per 10 cm') }],
  repeats: [{ name: 'shell', gauge: gauge('6 per 4.2 cm', null), across: new Fraction(10, 42), up: null }],
  body: body('head', ['Child', 'Woman']),
})

describe('the example of each function is true', () => {
  it.each(Object.entries(functions))('%s', (_, { example }) => {
    expect(printed(example.formula, '', facts)).toBe(example.prints)
  })
})
