import { describe, expect, it } from 'vitest'
import type { Pattern } from '../../src/pattern/pattern.ts'
import { demoText, readDemo } from '../demo-drafts.ts'

/** An edit of a draft in one place: words that stand there once, and what is written instead. */
type Edit = readonly [from: string, to: string]

function edited(text: string, [from, to]: Edit): string {
  const [before, after, ...more] = text.split(from)
  if (before === undefined || after === undefined || more.length > 0)
    throw new Error(`“${from}” does not stand there once`)
  return before + to + after
}

/** The pattern of a draft after an edit, and what speaks against publishing it. */
function changed(slug: string, text: string): { pattern: Pattern; wrong: readonly string[] } {
  const { value: pattern, diagnostics } = readDemo(slug, text).outcome
  if (pattern === null) throw new Error(`${slug} can’t be read`)
  const found = diagnostics
    .filter(({ severity }) => severity !== 'note')
    .map(({ code, message }) => `${code}: ${message}`)
  const rows = pattern.rows.filter(({ status, agrees }) => status !== 'worked' || agrees === false)
  return { pattern, wrong: [...found, ...rows.map(({ piece, label }) => `${piece}, ${label}`)] }
}

/** A named value of the grading block, one number a size. */
function numbers({ values }: Pattern, name: string): readonly number[] {
  return values[name]?.bySize.map(Number) ?? []
}

/** What a size works, row by row. */
function worked({ rows, sizes }: Pattern, name: string): readonly string[] {
  const size = sizes.indexOf(name)
  return rows.flatMap(({ piece, label, total }) => (total[size] === null ? [] : [`${piece}, ${label}: ${total[size]}`]))
}

const yoke = 'mooring-ring-pullover'
const bonnet = 'lugsail-bonnet'

const gauge = (stitches: string, rows: string) => `stitches: ${stitches} per 10 cm\n  rows: ${rows} per 10 cm`

describe('another swatch', () => {
  it.each([
    [yoke, gauge('15', '11'), ['13', '9'], 'bust_made', 'bust'],
    [yoke, gauge('15', '11'), ['14', '10.5'], 'bust_made', 'bust'],
    [yoke, gauge('15', '11'), ['16.5', '12'], 'bust_made', 'bust'],
    [yoke, gauge('15', '11'), ['20', '15'], 'bust_made', 'bust'],
    [bonnet, gauge('17', '14'), ['12', '10'], 'tie_made', 'tie'],
    [bonnet, gauge('17', '14'), ['18', '15.5'], 'tie_made', 'tie'],
    [bonnet, gauge('17', '14'), ['24', '20'], 'tie_made', 'tie'],
  ] as const)('%s: %s', (slug, from, [stitches, rows], made, wanted) => {
    const text = demoText(slug)
    const { pattern, wrong } = changed(slug, edited(text, [from, gauge(stitches, rows)]))
    expect(wrong).toEqual([])
    const before = changed(slug, text).pattern
    expect(pattern.rows.map(({ total }) => total)).not.toEqual(before.rows.map(({ total }) => total))
    // The piece is as large as before, to two stitches.
    const target = numbers(pattern, wanted)
    expect(target).toEqual(numbers(before, wanted))
    for (const [size, measure] of numbers(pattern, made).entries())
      expect(Math.abs(measure - (target[size] ?? 0))).toBeLessThanOrEqual(20 / Number(stitches) + 1e-9)
  })
})

describe('a size in the middle of the range', () => {
  it.each([
    [yoke, 'Large', 'Medium, '],
    [yoke, '2X', 'X-Large, '],
    [bonnet, '6–12 months', '3–6 months, '],
  ])('%s: %s is one name', (slug, name, before) => {
    const whole = demoText(slug)
    const without = edited(whole, [`${before}${name}, `, before])
    expect(without.split('\n').filter((line, index) => line !== whole.split('\n')[index])).toHaveLength(1)
    const fewer = changed(slug, without)
    const more = changed(slug, edited(without, [before, `${before}${name}, `]))
    expect([...fewer.wrong, ...more.wrong]).toEqual([])
    expect(more.pattern.sizes).toHaveLength(fewer.pattern.sizes.length + 1)
    expect(worked(more.pattern, name).length).toBeGreaterThan(10)
  })

  it('leaves the rows of the other sizes as they were', () => {
    const more = changed(bonnet, demoText(bonnet)).pattern
    const fewer = changed(bonnet, edited(demoText(bonnet), ['6–12 months, ', ''])).pattern
    for (const size of fewer.sizes) expect(worked(more, size)).toEqual(worked(fewer, size))
  })

  it('leaves the others within two stitches at the bust, where counts are linked and must rise', () => {
    const more = changed(yoke, demoText(yoke)).pattern
    const fewer = changed(yoke, edited(demoText(yoke), ['Medium, Large, ', 'Medium, '])).pattern
    const busts = numbers(more, 'bust_made').filter((_, size) => more.sizes[size] !== 'Large')
    for (const [size, bust] of numbers(fewer, 'bust_made').entries())
      expect(Math.abs(bust - (busts[size] ?? 0))).toBeLessThanOrEqual(20 / 15 + 1e-9)
  })

  it('has its cell in every line of the sizes, its yarn and its body', () => {
    const { pattern } = changed(yoke, demoText(yoke))
    const lines = [...pattern.fits, ...pattern.finished].map(({ cells }) => cells.length)
    expect(new Set(lines)).toEqual(new Set([9]))
    expect(pattern.yarn.main?.grams).toHaveLength(9)
  })
})

describe('another length', () => {
  it.each([['5 cm'], ['22 cm'], ['9 in']])('the pullover ends %s below the waist', (length) => {
    const { pattern, wrong } = changed(yoke, edited(demoText(yoke), ['below_waist = 15 cm', `below_waist = ${length}`]))
    const before = changed(yoke, demoText(yoke)).pattern
    expect(wrong).toEqual([])
    const [value = 0, unit = ''] = [Number.parseFloat(length), length.split(' ')[1]]
    const longer = value * (unit === 'in' ? 2.54 : 1) - 15
    // To one round.
    for (const [size, made] of numbers(pattern, 'length_made').entries())
      expect(Math.abs(made - (numbers(before, 'length_made')[size] ?? 0) - longer)).toBeLessThan(10 / 11)
    expect(numbers(pattern, 'sleeve_made')).toEqual(numbers(before, 'sleeve_made'))
    const grams = (each: Pattern) => each.yarn.main?.grams ?? []
    for (const [size, weight] of grams(pattern).entries())
      expect(Math.sign(weight - (grams(before)[size] ?? 0))).toBe(Math.sign(longer))
  })

  it('the bonnet has shorter ties', () => {
    const { pattern, wrong } = changed(bonnet, edited(demoText(bonnet), ['tie        = 20 cm', 'tie        = 16 cm']))
    expect(wrong).toEqual([])
    expect(pattern.rows.find(({ piece, label }) => piece.startsWith('Tie') && label === 'Row 1')?.total[0]).toBe(27)
    expect(pattern.cautions.length).toBe(2)
  })
})
