import { describe, expect, test } from 'vitest'
import { choiceIn, inAddresses, withChoice } from '../../src/client/address.ts'

describe('names in addresses', () => {
  test.each([
    [
      ['Child', 'Adult S'],
      ['child', 'adult-s'],
    ],
    [
      ['X-Small', '2X', '0–3 months'],
      ['x-small', '2x', '0-3-months'],
    ],
    [
      ['Größe 1', 'Ø 20'],
      ['größe-1', 'ø-20'],
    ],
    // Each has its own, whatever the names are.
    [
      ['S', 'S+', 's.'],
      ['s', 's-2', 's-3'],
    ],
    [
      ['All', '+', '++'],
      ['all', '-2', '-3'],
    ],
  ])('%j are %j', (names, expected) => {
    expect(inAddresses(names)).toEqual(expected)
  })
})

describe('a choice in the address', () => {
  test.each([
    ['', 'size', 'adult-s', '?size=adult-s'],
    ['?size=child', 'size', 'adult-s', '?size=adult-s'],
    ['?a=1&size=child&b=2', 'size', null, '?a=1&b=2'],
    ['?size=child', 'size', null, ''],
    ['', 'size', null, ''],
    ['?terms=uk', 'size', 'child', '?terms=uk&size=child'],
  ])('%j with %s %j is %j', (search, name, value, expected) => {
    expect(withChoice(search, name, value)).toBe(expected)
  })

  test.each([
    ['?size=adult-s', 'adult-s'],
    ['?size=Adult+S', 'adult-s'],
    ['?size=Adult%20S&x=1', 'adult-s'],
    ['?size=adult-m', null],
    ['?size=', null],
    ['?terms=adult-s', null],
    ['?size=%E0%A4%A', null],
  ])('%j asks for %j', (search, expected) => {
    expect(choiceIn(search, 'size', ['all', 'child', 'adult-s'])).toBe(expected)
  })
})
