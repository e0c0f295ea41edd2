import { describe, expect, test } from 'vitest'
import { currentRow, nothingDone, type Place, withDone } from '../../../src/client/place/place.ts'
import { progressOf } from '../../../src/client/place/progress.ts'
import type { Work } from '../../../src/client/place/rows.ts'
import { placeName, progressWords, rowName, rowsName, toldNext } from '../../../src/client/place/words.ts'
import { adult, child, data, rowOf } from './work.ts'

/** The place after steps: `rnd-2:3` is three of that row done. */
function worked(work: Work, ...steps: string[]): Place {
  return steps.reduce((place, step) => {
    const [id = '', count = '1'] = step.split(':')
    return withDone(work, place, rowOf(work, id), Number(count))
  }, nothingDone)
}

/** The row in hand as `id, done`. */
function inHand(work: Work, place: Place): string | null {
  const current = currentRow(work, place)
  return current === null ? null : `${current.row.id}, ${current.done}`
}

describe('the rows of a size', () => {
  test('are those that it works, with the stitches of each that they stand for', () => {
    expect(child.rows.map(({ id, stitches }) => [id, stitches])).toEqual([
      ['foundation', [0]],
      ['rnd-1', [60]],
      ['rnd-2', [60, 60, 60]],
      ['strap-1', [10]],
      ['strap-2', [null, null]],
    ])
    expect(rowOf(adult, 'rnd-2').stitches).toEqual([72, 72, 72, 80])
    expect(adult.times.get('Strap')).toBe(2)
  })
})

describe('the row in hand', () => {
  test.each([
    ['at the beginning', [], 'foundation, 0'],
    ['after the first', ['foundation'], 'rnd-1, 0'],
    ['within a range', ['foundation', 'rnd-1', 'rnd-2:2'], 'rnd-2, 2'],
    ['after a range', ['rnd-2:3'], 'strap-1, 0'],
    ['after a count taken down again', ['rnd-2:3', 'rnd-2:1'], 'rnd-2, 1'],
    // Whatever was left out before is worked last.
    ['where the rest is done', ['rnd-1', 'rnd-2:3', 'strap-1', 'strap-2:2'], 'foundation, 0'],
    ['where all is done', ['foundation', 'rnd-1', 'rnd-2:3', 'strap-1', 'strap-2:2'], null],
  ])('%s', (_, steps, expected) => {
    expect(inHand(child, worked(child, ...steps))).toBe(expected)
  })

  test.each([
    ['rnd-2:9', 3],
    ['rnd-2:-1', 0],
  ])('%s keeps to the rows that there are', (step, count) => {
    expect(worked(child, step).done['rnd-2']).toBe(count)
  })

  test('begins the next piece of several when one is finished', () => {
    const one = worked(adult, 'strap-1', 'strap-2:2')
    expect(one.finished).toEqual({ Strap: 1 })
    expect(inHand(adult, one)).toBe('strap-1, 0')
    const both = withDone(adult, withDone(adult, one, rowOf(adult, 'strap-1'), 1), rowOf(adult, 'strap-2'), 2)
    expect(both.finished).toEqual({ Strap: 1 })
    expect(inHand(adult, both)).toBe('foundation, 0')
    expect(worked(child, 'strap-1', 'strap-2:2').finished).toEqual({})
  })

  test('is found again where the row that was in hand is gone', () => {
    expect(inHand(child, { done: { gone: 3, 'rnd-1': 9 }, finished: {}, at: 'gone' })).toBe('foundation, 0')
  })
})

describe('how far along it is', () => {
  test.each([
    ['nothing', [], 0, 250, 0],
    // Rows differ, so the figure goes by stitches.
    ['a round', ['rnd-1'], 60, 250, 24],
    ['part of a range', ['rnd-1', 'rnd-2:2'], 180, 250, 72],
    ['all', ['rnd-1', 'rnd-2:3', 'strap-1', 'strap-2:2'], 250, 250, 100],
  ])('%s', (_, steps, made, all, percent) => {
    expect(progressOf(child, worked(child, ...steps))).toEqual({ made, all, percent, of: 'stitches' })
  })

  test('counts a piece as often as it is made', () => {
    expect(progressOf(adult, nothingDone).all).toBe(72 + 72 * 3 + 80 + 80 + 2 * 10)
    expect(progressOf(adult, worked(adult, 'strap-1', 'strap-2:2')).made).toBe(10)
  })

  test('says all only when nothing is left', () => {
    const work: Work = {
      times: new Map(),
      rows: [{ id: 'a', piece: '', word: null, from: null, stitches: Array(300).fill(1) }],
    }
    expect(progressOf(work, worked(work, 'a:299')).percent).toBe(99)
  })

  test('goes by rows where no stitches are known', () => {
    const work: Work = {
      times: new Map(),
      rows: [{ id: 'a', piece: '', word: null, from: null, stitches: [null, null] }],
    }
    expect(progressOf(work, worked(work, 'a:1'))).toEqual({ made: 1, all: 2, percent: 50, of: 'rows' })
  })
})

describe('words', () => {
  test.each([
    ['foundation', 0, 'Foundation', 'Foundation'],
    ['rnd-1', 0, 'Rnd 1', 'Rnd 1'],
    ['rnd-2', 2, 'Rnd 4', 'Rnds 2–5'],
    ['strap-2', 1, 'Row 2 of 2', '2 Rows'],
  ])('%s after %d', (id, done, name, whole) => {
    const row = rowOf(adult, id)
    expect(rowName({ row, done })).toBe(name)
    expect(rowsName(row)).toBe(whole)
  })

  test.each([
    ['rnd-1', 0, 'Rnd 1'],
    ['rnd-2', 2, 'Rnd 4, 3 of 4'],
    ['strap-1', 0, 'Row 1, piece 1 of 2'],
    ['strap-2', 0, 'Row 1 of 2, piece 1 of 2'],
  ])('of the place at %s', (id, done, expected) => {
    expect(placeName(adult, nothingDone, { row: rowOf(adult, id), done })).toBe(expected)
  })

  test('of how far along', () => {
    expect(progressWords({ made: 100, all: 1340, of: 'stitches', percent: 7 })).toBe('7 %, 1,240 sts left')
    expect(progressWords({ made: 1, all: 2, of: 'rows', percent: 50 })).toBe('50 %, 1 row left')
    const place = worked(child, 'foundation')
    expect(toldNext(child, place, currentRow(child, place), progressOf(child, place))).toBe(
      'Next: Rnd 1. 0 % done, 250 stitches left.',
    )
    expect(toldNext(child, place, null, { made: 249, all: 250, of: 'stitches', percent: 99 })).toBe(
      'All rows are done. 99 % done, 1 stitch left.',
    )
  })
})

test('the data of another size is another work', () => {
  expect(data.sizes.length).toBe(2)
  expect(adult.rows.map(({ id }) => id)).toContain('rnd-6')
  expect(child.rows.map(({ id }) => id)).not.toContain('rnd-6')
})
