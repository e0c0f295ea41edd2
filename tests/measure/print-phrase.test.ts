import { describe, expect, it } from 'vitest'
import { printPhrase, textForAll, textForSize } from '../../src/measure/index.ts'

const names = ['Child', 'Adult S', 'Adult L']

describe('a phrase for all sizes', () => {
  it.each([
    ['the same everywhere', ['work 2 rows even', 'work 2 rows even', 'work 2 rows even'], 'work 2 rows even'],
    ['numbers', ['over 60', 'over 60', 'over 72'], 'over 60 (60, 72)'],
    ['ordinals', ['of every 4th row', 'of every 4th row', 'of every 6th row'], 'of every 4th (4th, 6th) row'],
    [
      'every row',
      ['of every row', 'of every 2nd row', 'of every 4th row'],
      'of every row (every 2nd row, every 4th row)',
    ],
    ['how often', ['row 6 times', 'row 7 times', 'row 5 times'], 'row 6 (7, 5) times'],
    ['how often in words', ['row once', 'row twice', 'row 5 times'], 'row once (twice, 5 times)'],
    ['one stitch and several', ['dec 1 st at', 'dec 2 sts at', 'dec 3 sts at'], 'dec 1 st (2 sts, 3 sts) at'],
    ['several stitches', ['to 60 sts', 'to 66 sts', 'to 72 sts'], 'to 60 (66, 72) sts'],
    ['a place', ['sc in next st', 'sc in next 4 sts', 'sc in next 5 sts'], 'sc in next st (next 4 sts, next 5 sts)'],
    ['more than one', ['1 st 4 times, 2', '1 st 5 times, 2', '1 st 4 times, 3'], '1 st 4 (5, 4) times, 2 (2, 3)'],
    ['other words', ['dec 1', 'inc 1', 'dec 2'], '\nSize Child: dec 1;\nSize Adult S: inc 1;\nSize Adult L: dec 2'],
    ['more words', ['a 1', 'a 1, b 2', 'a 1'], '\nSize Child: a 1;\nSize Adult S: a 1, b 2;\nSize Adult L: a 1'],
    ['a size without it', ['a 1', null, 'a 2'], '\nSize Child: a 1;\nSize Adult S: –;\nSize Adult L: a 2'],
    ['no size with it', [null, null, null], '–'],
  ])('%s', (_, texts, expected) => {
    const segments = printPhrase(texts, names)
    expect(textForAll(segments)).toBe(expected)
    for (const [size, text] of texts.entries()) expect(textForSize(segments, size)).toBe(text ?? '–')
  })
})
