import { describe, expect, it } from 'vitest'
import type { Measure } from '../../src/pattern/pattern.ts'
import { measureLines } from '../../src/proof/report/measure-lines.ts'
import { plainPaint } from '../../src/proof/report/paint.ts'

function width(parts: Partial<Measure>): Measure {
  return { label: 'Width', unit: 'cm', target: null, made: [50, 70], difference: null, head: null, ...parts }
}

const printed = (measures: readonly Measure[]): string => measureLines(measures, plainPaint)

describe('finished measures in the report', () => {
  it('stand beside what they were to be, to a tenth of a centimetre', () => {
    const measures = [
      width({ target: [52, 68], difference: [-2, 2] }),
      width({ label: 'Depth', made: [22.04, null], target: [22.09, null], difference: [-0.05, null] }),
    ]
    expect(printed(measures).split('\n')).toEqual([
      'Finished measures',
      '  Width  made   50 (70) cm',
      '         to be  52 (68) cm',
      '         off    −2 (+2) cm',
      '  Depth  made   22 (–) cm, as it was to be',
    ])
  })

  it.each([
    [
      'inches to an eighth',
      width({ unit: 'in', made: [19.69, 27.5], target: [20, 28], difference: [-0.31, -0.5] }),
      ['19¾ (27½) in', '20 (28) in', '−¼ (−½) in'],
    ],
    ['a count without a unit', width({ unit: null, made: [12, 12] }), ['12']],
    ['a measure without a target', width({}), ['50 (70) cm']],
  ])('%s', (_, measure, amounts) => {
    const shown = printed([measure]).split('\n').slice(1)
    expect(shown.map((line) => line.slice(16))).toEqual(amounts)
  })

  it('keep to the width of the paper', () => {
    const many = Array.from({ length: 24 }, (_, size) => 51.7 + size)
    const label = 'From the middle of the back to the point of the shoulder when worn'
    const text = printed([
      width({ label, made: many, target: many.map((each) => each + 1), difference: many.map(() => -1) }),
    ])
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80)
    expect(text).toContain('51.7 (52.7, 53.7')
  })

  it('that a head must pass say so, stretched', () => {
    const head = { around: [55, 57], stretch: 20, stretched: [60, 84] }
    expect(
      printed([width({ label: 'Neck', head })])
        .split('\n')
        .slice(1),
    ).toEqual(['  Neck  made   50 (70) cm', '        +20 %  60 (84) cm, stretched', '        head   55 (57) cm'])
  })

  it('are left out where there are none', () => {
    expect(printed([])).toBe('')
  })
})
