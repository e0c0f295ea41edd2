import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { createEnvironment, readGauge, readSwatches, type WrittenSwatch } from '../../src/grading/index.ts'
import { loadSolver } from '../../src/solver/index.ts'
import { calculated, nowhere, printed, sheet, written } from '../formula/workbench.ts'

const plain: WrittenSwatch = { name: null, stitches: [], rows: [], unblocked: null, repeats: [] }

function mean(measurements: readonly string[]) {
  const { value, diagnostics } = readGauge({ stitches: measurements.map(written), rows: [] })
  return { perTen: value?.stitches?.mul(10).toFraction(true), codes: diagnostics.map(({ code }) => code) }
}

describe('several measurements of one swatch', () => {
  it.each([
    [['12 per 10 cm'], '12'],
    [['12 per 10 cm', '12.5 per 10 cm', '24 per 20 cm'], '12 1/8'],
    [['12 per 10 cm', '12.5 per 10 cm'], '12 1/4'],
    [['24 per 20 cm', '12.5 per 10 cm'], '12 1/6'],
    [['6 per 5 cm', '25 per 20 cm'], '12 2/5'],
    [['12 per 10 cm', '12 per 4 in'], '11 19/21'],
  ])('%j give their mean by length', (measurements, perTen) => {
    expect(mean(measurements)).toEqual({ perTen, codes: [] })
  })

  it.each([
    ['by a twentieth of the mean', ['19.5 per 10 cm', '20.5 per 10 cm'], []],
    ['by a little more', ['19.4 per 10 cm', '20.5 per 10 cm'], ['gauge-scatters']],
    ['in another unit', ['16 per 4 in', '16 per 10 cm'], []],
    ['in another unit, by more', ['17 per 4 in', '16 per 4 in'], ['gauge-scatters']],
    ['one of many', ['12 per 10 cm', '12 per 10 cm', '12 per 10 cm', '13 per 10 cm'], ['gauge-scatters']],
    ['not at all', ['12 per 10 cm', '24 per 20 cm'], []],
  ])('scatter %s', (_, measurements, codes) => {
    expect(mean(measurements).codes).toEqual(codes)
  })

  it('are told of at the one that lies farthest from the mean', () => {
    const at = (start: number) => ({ start, end: start + 1 })
    const stitches = ['12 per 10 cm', '14 per 10 cm', '12 per 10 cm'].map((text, index) => ({ text, at: at(index) }))
    expect(readGauge({ stitches, rows: [] }).diagnostics.map((finding) => finding.at)).toEqual([at(1)])
  })

  it('refused: one that cannot be read, each at its place, and no mean of the rest', () => {
    expect(mean(['12 per 10 cm', 'many', '0 per 10 cm'])).toEqual({
      perTen: undefined,
      codes: ['gauge-unreadable', 'gauge-not-positive'],
    })
  })
})

/** What formulas see of these swatches. */
async function facts(swatches: readonly WrittenSwatch[]) {
  const read = readSwatches(swatches)
  expect(read.diagnostics.map(({ message }) => message)).toEqual([])
  return createEnvironment({ sizes: ['S', 'L'], ...read.value, body: null, skein: null, solver: await loadSolver() })
}

const blocked: WrittenSwatch = {
  ...plain,
  stitches: [written('12 per 10 cm')],
  rows: [written('8 per 10 cm')],
  unblocked: { stitches: [written('12.5 per 10 cm')], rows: [written('10 per 10 cm')] },
}

describe('a swatch before and after blocking', () => {
  it.each([
    ['stitches(50 cm)', 60],
    ['stitches(50 cm, unblocked)', 62.5],
    ['height(20)', 25],
    ['height(20, unblocked)', 20],
    ['height(20, "unblocked")', 20],
  ])('%s', async (formula, value) => {
    expect(calculated(formula, '', await facts([blocked]))).toEqual([value, value])
  })

  it('with a name keeps it before blocking', async () => {
    const named = await facts([
      { ...blocked, name: 'body' },
      { ...plain, name: 'rib', rows: [written('5 per 10 cm')] },
    ])
    expect(calculated('rows(50 cm, "body unblocked")', '', named)).toEqual([50, 50])
    expect(sheet('a = rows(50 cm, "rib unblocked")', named).diagnostics.map(({ code }) => code)).toEqual([
      'swatch-unknown',
    ])
  })

  it('of a swatch that is called so itself is not in the way', async () => {
    const named = await facts([
      { ...blocked, name: 'blocked', unblocked: null },
      { ...plain, name: 'unblocked', rows: [written('11 per 10 cm')] },
    ])
    expect(calculated('rows(10 cm)', '', named)).toEqual([8, 8])
    expect(calculated('rows(10 cm, unblocked)', '', named)).toEqual([11, 11])
  })
})

const shell = {
  name: 'shell',
  at: nowhere,
  stitches: 6,
  width: [written('4.2 cm')],
  rows: 2,
  height: [written('5 per 15 cm')],
}
const lace: WrittenSwatch = { ...plain, repeats: [shell] }
const mixed: WrittenSwatch = { ...blocked, repeats: [shell] }

describe('a repeat with measures of its own', () => {
  it.each([
    ['repeats(84 cm, shell)', 20],
    ['repeats(50 cm, shell) as whole', 12],
    ['repeats_width(20, shell)', 84],
    ['repeats_width(repeats(50 cm, shell), shell)', 50],
    ['stitches(84 cm, shell)', 120],
    ['width(120, shell)', 84],
    ['rows(30 cm, shell)', 20],
    ['height(20, "shell")', 30],
    ['stitches(50 cm)', 60],
    ['rows(10 cm)', 8],
  ])('%s, beside the stitches of the swatch', async (formula, value) => {
    expect(calculated(formula, '', await facts([mixed]))).toEqual([value, value])
  })

  it.each([
    ['stitches(84 cm)', 120],
    ['rows(30 cm)', 20],
  ])('%s, where the swatch says nothing else', async (formula, value) => {
    expect(calculated(formula, '', await facts([lace]))).toEqual([value, value])
  })

  it.each([
    ['one', ['4.2 cm'], '10/21'],
    ['several side by side', ['5 per 21 cm'], '10/21'],
    ['with a noun', ['5 shells per 21 cm'], '10/21'],
    ['measured more than once', ['4 cm', '5 per 21 cm'], '12/25'],
    ['in inches', ['2 in'], '50/127'],
  ])('%s', (_, width, inTwo) => {
    const { value, diagnostics } = readSwatches([{ ...plain, repeats: [{ ...shell, width: width.map(written) }] }])
    expect(diagnostics).toEqual([])
    expect(value.repeats[0]?.across?.mul(2).equals(new Fraction(inTwo))).toBe(true)
  })

  it.each([
    ['', 'repeat-unreadable'],
    ['4.2', 'repeat-unreadable'],
    ['4.2 g', 'repeat-unreadable'],
    ['0 cm', 'repeat-unreadable'],
    ['-4 cm', 'repeat-unreadable'],
    ['0 per 21 cm', 'repeat-unreadable'],
  ])('refused: a width of %j', (width, code) => {
    const read = readSwatches([{ ...plain, repeats: [{ ...shell, width: [written(width)] }] }])
    expect(read.diagnostics.map((finding) => finding.code)).toEqual([code])
    const seen = createEnvironment({ sizes: ['S'], ...read.value, body: null, skein: null })
    expect(sheet('a = repeats(10 cm, shell)', seen).diagnostics).toEqual([])
  })

  it('that scatters is told of', () => {
    const width = ['4 cm', '4.4 cm'].map(written)
    const { diagnostics } = readSwatches([{ ...plain, repeats: [{ ...shell, width }] }])
    expect(diagnostics.map(({ code }) => code)).toEqual(['gauge-scatters'])
  })

  it.each([
    [
      'another repeat',
      [
        { ...lace, name: 'a' },
        { ...lace, name: 'b' },
      ],
    ],
    ['a swatch', [{ ...lace, name: 'shell' }]],
  ])('refused: the name of %s', (_, swatches) => {
    expect(readSwatches(swatches).diagnostics.map(({ code }) => code)).toEqual(['gauge-named-twice'])
  })

  it('is printed in the unit that it was measured in', async () => {
    const inches = await facts([{ ...plain, repeats: [{ ...shell, width: [written('2 in')] }] }])
    expect(printed('repeats_width(5, shell)', '', inches)).toBe('10 in (25.5 cm)')
  })

  it('counts linked repeats', async () => {
    const text = 'shells ~ repeats([50, 60] cm, shell)\nmade = repeats_width(shells, shell)\nneed made >= 52 cm'
    const { settled, diagnostics } = sheet(text, await facts([mixed]))
    expect(diagnostics).toEqual([])
    expect(settled.values.get('shells')?.bySize.map(Number)).toEqual([13, 14])
  })
})
