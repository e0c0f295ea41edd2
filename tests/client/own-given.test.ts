import { describe, expect, test } from 'vitest'
import {
  changesOf,
  fieldsOf,
  givenIn,
  givenText,
  givesAny,
  lengthLimits,
  rateLimits,
  readField,
  refusedIn,
  withGiven,
} from '../../src/client/own/given.ts'
import type { Adjustable } from '../../src/pattern/pattern.ts'

const adjustables: readonly Adjustable[] = [
  {
    kind: 'length',
    name: 'body_length',
    label: 'Body length',
    text: [],
    bySize: [36, 38],
    unit: 'cm',
    from: 28,
    to: 50,
  },
  {
    kind: 'gauge',
    name: '',
    label: 'Gauge',
    text: [],
    stitches: { count: 14, over: [] },
    rows: { count: 11, over: [] },
    within: 10,
  },
]
const fields = fieldsOf(adjustables)
const [length, stitches] = fields

test('there is a field for a length, and one for stitches and one for rows', () => {
  expect(fields.map(({ key }) => key)).toEqual(['my-body-length', 'my-stitches', 'my-rows'])
})

describe('what is typed into a field', () => {
  test.each([
    ['30', 'cm', { amount: 30, unit: 'cm' }],
    ['30,5', 'cm', { amount: 30.5, unit: 'cm' }],
    ['12 1/2', 'in', { amount: 12.5, unit: 'in' }],
    ['12½ in', 'cm', { amount: 12.5, unit: 'in' }],
    ['11', 'in', 'outside'],
    ['50', 'cm', { amount: 50, unit: 'cm' }],
    ['50.5', 'cm', 'outside'],
    ['19½', 'in', { amount: 19.5, unit: 'in' }],
    ['19¾', 'in', 'outside'],
    ['0', 'cm', 'unreadable'],
    ['-30', 'cm', 'unreadable'],
    ['long', 'cm', 'unreadable'],
    ['', 'cm', 'unreadable'],
  ] as const)('as a length: %j in %s', (text, unit, read) => {
    expect(length && readField(length, text, unit)).toEqual(read)
  })

  test.each([
    ['14', 14],
    ['13.5', 13.5],
    ['13½', 13.5],
    ['13,5', 13.5],
    ['12.6', 12.6],
    ['15.4', 15.4],
    ['12.5', 'outside'],
    ['15.5', 'outside'],
    ['140', 'outside'],
    ['0', 'unreadable'],
    ['-14', 'unreadable'],
    ['some', 'unreadable'],
    ['1e1', 'unreadable'],
  ] as const)('as stitches: %j', (text, read) => {
    expect(stitches && readField(stitches, text, 'cm')).toEqual(read)
  })

  test('its limits are said as they are kept to', () => {
    for (const unit of ['cm', 'in'] as const) {
      const [least, most] = length?.kind === 'length' ? lengthLimits(length, unit) : []
      for (const limit of [least, most]) {
        expect(length && readField(length, String(limit), unit)).toEqual({ amount: limit, unit })
      }
    }
    expect(length?.kind === 'length' && lengthLimits(length, 'in')).toEqual([11.25, 19.5])
    expect(stitches?.kind === 'rate' && rateLimits(stitches)).toEqual([12.6, 15.4])
  })
})

describe('an address', () => {
  const search = '?size=m&my-body-length=12.5in&my-rows=11.5&my-other=3'

  test('gives what it can, and is given back', () => {
    const given = givenIn(search, fields)
    expect(changesOf(fields, given)).toEqual({
      lengths: { body_length: '12.5 in' },
      gauges: { '': { stitches: null, rows: '11.5' } },
    })
    expect(givenText(given)).toBe('my-body-length=12.5in&my-rows=11.5')
    expect(withGiven(search, given)).toBe('?size=m&my-body-length=12.5in&my-rows=11.5')
    expect(withGiven(search, new Map())).toBe('?size=m')
  })

  test.each(['?my-body-length=5cm', '?my-body-length=long', '?my-rows=0', '?my-rows=', '?size=m', ''])(
    '%j gives nothing',
    (text) => {
      expect(givenIn(text, fields).size).toBe(0)
      const refused = refusedIn(text, fields).map(([{ key }]) => key)
      expect(refused).toEqual([...new URLSearchParams(text).keys()].filter((key) => key.startsWith('my-')))
    },
  )

  test.each([
    ['?my-rows=3', true],
    ['my-rows=3', true],
    ['?size=my-size', false],
    ['', false],
  ])('%j asks for numbers: %s', (text, asks) => {
    expect(givesAny(text)).toBe(asks)
  })
})
