import { describe, expect, it } from 'vitest'
import { readRowNumbers } from '../../src/yarn/claims.ts'

describe('rows that a yarn is claimed for', () => {
  it.each([
    [
      'Rnds 1-4, 7',
      {
        ranges: [
          [1, 4],
          [7, 7],
        ],
        every: null,
      },
    ],
    ['Row 12', { ranges: [[12, 12]], every: null }],
    [
      '3 and 4',
      {
        ranges: [
          [3, 3],
          [4, 4],
        ],
        every: null,
      },
    ],
    [
      'Rows 3, 4 of every 4',
      {
        ranges: [
          [3, 3],
          [4, 4],
        ],
        every: 4,
      },
    ],
  ])('%s', (text, expected) => {
    expect(readRowNumbers(text)).toEqual(expected)
  })

  it.each([['the stripes'], ['Rows of every 4'], ['Rows 1 of every 0'], ['']])('%s is none', (text) => {
    expect(readRowNumbers(text)).toBeNull()
  })
})
