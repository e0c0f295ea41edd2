import { describe, expect, it } from 'vitest'
import { tokenize } from '../../src/formula/token.ts'

describe('a formula is cut into tokens', () => {
  const cases: readonly (readonly [string, string])[] = [
    ['a = 1', 'name:a sign:= number:1'],
    ['rim_sts*2', 'name:rim_sts sign:* number:2'],
    ['20½ in', 'number:20½ name:in'],
    ['.5', 'number:.5'],
    ['a <= b', 'name:a sign:<= name:b'],
    ['a ≤ b', 'name:a sign:≤ name:b'],
    ['"Adult S"', 'text:"Adult S"'],
    ['“Adult S”', 'text:“Adult S”'],
    ['"it’s"', 'text:"it’s"'],
    ["'open", "text:'open"],
    ['a # rest = 1', 'name:a comment:# rest = 1'],
    ['"#1"', 'text:"#1"'],
    ['a\r\nb', 'name:a newline:\r\n name:b'],
    ['größe2', 'name:größe2'],
    ['a @ b', 'name:a unknown:@ name:b'],
    ['😀', 'unknown:😀'],
  ]
  it.each(cases)('%j', (text, expected) => {
    const tokens = tokenize(text).filter(({ kind }) => kind !== 'space')
    expect(tokens.map((token) => `${token.kind}:${token.text}`).join(' ')).toBe(expected)
  })

  it('places count from the draft’s first character', () => {
    expect(tokenize('a = 1', 40).map(({ at }) => at.start)).toEqual([40, 41, 42, 43, 44])
  })

  it('an indented block has places of its own', () => {
    const indented = (offset: number) => offset + (offset < 6 ? 2 : 4)
    expect(tokenize('a = 1\nb = 2', indented).at(-1)?.at).toEqual({ start: 14, end: 15 })
  })
})
