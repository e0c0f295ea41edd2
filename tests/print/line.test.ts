import { describe, expect, it } from 'vitest'
import { openFaces } from '../../src/print/face.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import type { Run } from '../../src/print/line.ts'
import { breakLines, measureRuns } from '../../src/print/line.ts'
import { everyday } from '../../src/print/look.ts'
import { strengthen } from '../../src/print/style.ts'

const { styles } = everyday

const setter = { faces: openFaces(loadFonts()), missing: new Set<string>() }
const run = (text: string): Run => ({ text, style: styles.text })

function linesOf(runs: readonly Run[], width: number): readonly string[] {
  return breakLines(setter, runs, width).map((line) => line.fragments.map((fragment) => fragment.text).join('|'))
}

describe('breaking lines', () => {
  it.each<[string, readonly Run[], number, readonly string[]]>([
    ['no words are one empty line', [], 100, ['']],
    ['words of one look are drawn at once', [run('sc in'), run(' next st')], 200, ['sc in next st ']],
    ['spaces in a row count once', [run('sc   in')], 200, ['sc in ']],
    [
      'another look is drawn apart',
      [run('a '), { text: 'b', style: strengthen(styles.text) }, run(' c')],
      200,
      ['a |b |c '],
    ],
    [
      'a word of two looks is not broken',
      [run('shell '), run('*'), { text: 'sk', style: styles.code }],
      36,
      ['shell ', '*|sk '],
    ],
    ['a newline ends a line', [run('a\nb')], 200, ['a ', 'b ']],
    ['two make an empty line', [run('a\n\nb')], 200, ['a ', '', 'b ']],
    ['a count stays with its stitch', [run('shells of 12 dc')], 62, ['shells of ', '12 dc ']],
    ['a list of counts stays with its stitch', [run('of 6 (7, 8) sc')], 52, ['of 6 (7, ', '8) sc ']],
    ['an instruction stays with its count', [run('then ch 3')], 40, ['then ', 'ch 3 ']],
    ['a count goes where it is followed by a word', [run('join 4 in the next')], 45, ['join 4 in ', 'the next ']],
    ['a word wider than the line is cut', [run('aaaaaaaaaa')], 30, ['aaaaa ', 'aaaaa ']],
    ['a space that does not break does not', [run('aa b\u00a0c')], 24, ['aa ', 'b\u00a0c ']],
  ])('%s', (_, runs, width, lines) => {
    expect(linesOf(runs, width)).toEqual(lines)
  })

  it('keeps every line within the width', () => {
    const text = 'Ch 1, sc in first st, *sk 2 sts, shell in next st; rep from * 8 (10, 12) more times. '.repeat(9)
    for (const width of [20, 60, 120, 391]) {
      const lines = breakLines(setter, [run(text)], width)
      expect(Math.max(...lines.map((line) => line.width))).toBeLessThanOrEqual(width + 0.02)
    }
  })

  it('loses no letter', () => {
    const text = 'Ch 1, sc in first st, https://lowwater.example/very/long/way, 9½ in (24 cm)'
    const letters = linesOf([run(text)], 50)
      .join('')
      .replace(/[\s|]/g, '')
    expect(letters).toBe(text.replace(/\s/g, ''))
  })
})

describe('measuring', () => {
  it('gives the whole and the widest word', () => {
    const { whole, word } = measureRuns(setter, [run('sc sc shell')])
    const alone = measureRuns(setter, [run('shell')])
    expect(word).toBeCloseTo(alone.whole)
    expect(whole).toBeGreaterThan(2 * measureRuns(setter, [run('sc')]).whole + word)
  })

  it('gives figures of one width for columns', () => {
    const width = (text: string, tabular: boolean): number =>
      measureRuns(setter, [{ text, style: { ...styles.text, tabular } }]).whole
    expect(width('111', true)).toBeCloseTo(width('000', true))
    expect(width('111', false)).not.toBeCloseTo(width('000', false))
  })
})
