import { describe, expect, it } from 'vitest'
import { timesMade } from '../../src/yarn/times.ts'

describe('pieces that are made more than once', () => {
  it.each<[string, string, readonly number[]]>([
    ['Sleeve (make 2)', '', [2, 2]],
    ['Square (make twelve)', '', [12, 12]],
    ['Motif, make 6 alike', '', [6, 6]],
    ['Sleeves (make both the same)', '', [2, 2]],
    ['Motif (make 12 (16))', '', [12, 16]],
    ['Motif ×4', '', [4, 4]],
    ['Motif', 'Make 12 (16) squares.', [12, 16]],
    ['Ear', 'Fasten off. Make 1 more.', [2, 2]],
    ['Sleeve', 'Work the second sleeve in the same way.', [2, 2]],
    ['Body', '', [1, 1]],
    ['Work 4 rounds even', 'Make 4 chains and begin. Make sure to count.', [1, 1]],
  ])('%s. %s', (piece, text, expected) => {
    expect([0, 1].map((size) => timesMade(piece, text, size))).toEqual(expected)
  })
})
