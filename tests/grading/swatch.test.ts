import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { readGauge } from '../../src/grading/index.ts'
import { nowhere, written } from '../formula/workbench.ts'

function stitchGauge(text: string) {
  return readGauge({ stitches: [written(text)], rows: [] })
}

describe('a stitch gauge is read exactly', () => {
  const read: readonly (readonly [string, string, 'cm' | 'in'])[] = [
    ['12 per 10 cm', '6/5', 'cm'],
    ['12.5 per 10cm', '5/4', 'cm'],
    ['12 1/2 per 10 cm', '5/4', 'cm'],
    ['12½ per 10 cm', '5/4', 'cm'],
    ['12 sts per 10 cm', '6/5', 'cm'],
    ['12 stitches over 10 cm', '6/5', 'cm'],
    ['12 sc in 10 cm', '6/5', 'cm'],
    ['16 per 4 in', '200/127', 'in'],
    ['16 in 4 in', '200/127', 'in'],
    ['24 per 100 mm', '12/5', 'cm'],
  ]
  it.each(read)('%s', (text, perCentimetre, unit) => {
    const { value, diagnostics } = stitchGauge(text)
    expect(diagnostics).toEqual([])
    expect(value?.stitches?.equals(new Fraction(perCentimetre))).toBe(true)
    expect(value?.unit).toBe(unit)
    expect(value?.rows).toBeNull()
  })

  const refused: readonly (readonly [string, string])[] = [
    ['', 'gauge-unreadable'],
    ['12', 'gauge-unreadable'],
    ['12 per', 'gauge-unreadable'],
    ['per 10 cm', 'gauge-unreadable'],
    ['12 per 10', 'gauge-unreadable'],
    ['12 per 10 g', 'gauge-unreadable'],
    ['12 per 10 miles', 'gauge-unreadable'],
    ['twelve per 10 cm', 'gauge-unreadable'],
    ['12 per 1/0 cm', 'gauge-unreadable'],
    ['0 per 10 cm', 'gauge-not-positive'],
    ['12 per 0 cm', 'gauge-not-positive'],
    ['-12 per 10 cm', 'gauge-not-positive'],
  ]
  it.each(refused)('refused: %j', (text, code) => {
    const { value, diagnostics } = stitchGauge(text)
    expect(value).toBeNull()
    expect(diagnostics.map((finding) => finding.code)).toEqual([code])
  })
})

describe('stitches and rows', () => {
  it('are each optional', () => {
    expect(readGauge({ stitches: [], rows: [written('8 per 10 cm')] }).value).toMatchObject({
      stitches: null,
      unit: 'cm',
    })
    expect(readGauge({ stitches: [], rows: [] }).value).toMatchObject({ stitches: null, rows: null })
  })

  it('are each reported at their own place', () => {
    const at = { start: 5, end: 9 }
    const { value, diagnostics } = readGauge({ stitches: [{ text: 'x', at: nowhere }], rows: [{ text: 'y', at }] })
    expect(value).toBeNull()
    expect(diagnostics.map((finding) => finding.at)).toEqual([nowhere, at])
  })
})
