import { expect, test } from 'vitest'
import { lastUpdated, updatedOn } from '../../src/announce/dates.ts'
import { pattern } from '../finding/pattern.ts'

const change = (date: string | null) => ({ edition: '1.1', date, note: 'Rnd 3.' })

test.each([
  ['no date', {}, null],
  ['its first day', { published: '2026-03-14' }, '2026-03-14'],
  [
    'the day of its last change',
    { published: '2026-03-14', changes: [change('2026-05-02'), change('2026-04-01')] },
    '2026-05-02',
  ],
  ['a change without a day', { published: '2026-03-14', changes: [change(null)] }, '2026-03-14'],
  ['changes alone', { changes: [change('2026-05-02')] }, '2026-05-02'],
])('a pattern with %s', (_, facts, day) => {
  expect(updatedOn(pattern('mat', facts))).toBe(day)
})

test('of several patterns the last day counts', () => {
  const days = ['2026-03-14', '2026-12-01', null, '2026-05-02']
  expect(lastUpdated(days.map((published, index) => pattern(`mat-${index}`, { published })))).toBe('2026-12-01')
  expect(lastUpdated([])).toBe(null)
})
