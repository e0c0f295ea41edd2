import { describe, expect, it } from 'vitest'
import { youngestIn } from '../../src/safety/ages.ts'

describe('the youngest age in the name of a size, in months', () => {
  it.each([
    ['0–3 months', 0],
    ['3-6m', 3],
    ['3 m–6 m', null],
    ['6 mo', 3],
    ['18 months', 12],
    ['6 months-3 years', 6],
    ['6-12 mths', 6],
    ['2T', 24],
    ['Age 4', 48],
    ['Ages 4–6', 48],
    ['4–6 years', 48],
    ['8 yrs', 96],
    ['Size 2 (18 months)', 12],
    ['Newborn', 0],
    ['Baby', 0],
    ['Toddler', 12],
    ['Child M', 36],
    ['Teen', 96],
    ['Adult S', 216],
    ['Women’s L', 216],
  ])('%s: %s', (name, age) => {
    expect(youngestIn(name)).toBe(age)
  })

  it.each(['S', 'XL', '2X', 'One size', '10', '40–44', '1 m', '6 mm', 'Lap', 'Kid mohair', 'Baby alpaca'])(
    'none in %s',
    (name) => {
      expect(youngestIn(name)).toBeNull()
    },
  )
})
