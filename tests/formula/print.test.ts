import { describe, expect, it } from 'vitest'
import { printExpression, printStatement, readFormula, readGrading } from '../../src/formula/index.ts'

function reprinted(text: string): string | null {
  const { value } = readFormula(text, 0)
  return value === null ? null : printExpression(value.expression)
}

describe('a formula is printed with no more brackets than it needs', () => {
  const cases: readonly (readonly [string, string])[] = [
    ['((a))', 'a'],
    ['(a*b)+c', 'a * b + c'],
    ['a*(b+c)', 'a * (b + c)'],
    ['a-(b-c)', 'a - (b - c)'],
    ['(a-b)-c', 'a - b - c'],
    ['1/(2 in)', '1 / (2 in)'],
    ['1/2 in', '0.5 in'],
    ['1/3 in', '1/3 in'],
    ['20 1/3', '20 1/3'],
    ['-(a+b)', '-(a + b)'],
    ['--a', '--a'],
    ['[1, 2]cm', '[1, 2] cm'],
    ['(1+2) cm', '(1 + 2) cm'],
    ['{ S : 1,L:2 }', '{S: 1, L: 2}'],
    ['“long”', '"long"'],
    ['stitches( rim,ribbing )as multiple of 6+1 up', 'stitches(rim, ribbing) as multiple of 6 + 1 up'],
    ['(a as even)+1', '(a as even) + 1'],
    ['a as multiple of 6 - 1', 'a as multiple of 6 + -1'],
    ['a<b<c', 'a < b and b < c'],
    ['a=1 or b=2 and not c is even', 'a = 1 or b = 2 and not c is even'],
    ['(a=1 or b=2) and c rises', '(a = 1 or b = 2) and c rises'],
    ['total( "Sleeve" , "Row 3" )', 'total("Sleeve", "Row 3")'],
    ['count("Sleeve", ch-2 sp, "Row 3")', 'count(ch-2 sp, "Sleeve", "Row 3")'],
  ]
  it.each(cases)('%s', (text, expected) => {
    expect(reprinted(text)).toBe(expected)
    expect(reprinted(expected)).toBe(expected)
  })

  it('statements', () => {
    const text = 'a = 1 + 2\nfront ~ a as odd\nneed a rises'
    expect(readGrading(text, 0).value.map(printStatement).join('\n')).toBe(text)
  })
})

describe('what the worked rows make is asked in the words of a row', () => {
  const cases: readonly (readonly [string, readonly [string, string | null, string | null]])[] = [
    ['total', ['total', null, null]],
    ['total("Rnd 4")', ['total', null, 'Rnd 4']],
    ['total(“Sleeve”, “Row 3”)', ['total', 'Sleeve', 'Row 3']],
    ['count(dc)', ['dc', null, null]],
    ['count(ch-2 sp)', ['ch-2 sp', null, null]],
    ['count( ch-2   sp , "Rnd 4")', ['ch-2 sp', null, 'Rnd 4']],
    ['count(shell, "Sleeve", "Row 3")', ['shell', 'Sleeve', 'Row 3']],
    ['count("Sleeve", shell, "Row 3")', ['shell', 'Sleeve', 'Row 3']],
    ['count("dc")', ['dc', null, null]],
    ['count(cluster (3 dc))', ['cluster (3 dc)', null, null]],
  ]
  it.each(cases)('%s', (text, [what, piece, row]) => {
    expect(readFormula(text, 0).value?.expression).toMatchObject({ kind: 'made', what, piece, row })
  })
})
