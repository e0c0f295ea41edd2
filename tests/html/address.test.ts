import { afterEach, describe, expect, test, vi } from 'vitest'
import { patternAddress, printAddress, siteAddress } from '../../src/layouts/address.ts'

afterEach(() => {
  vi.unstubAllEnvs()
})

describe.each([
  ['/', '/'],
  ['/shed', '/shed/'],
  ['/shed/', '/shed/'],
])('on a site that stands at %s', (base, top) => {
  test('addresses start there', () => {
    vi.stubEnv('BASE_URL', base)
    expect(siteAddress('')).toBe(top)
    expect(patternAddress('tide-line')).toBe(`${top}patterns/tide-line/`)
    expect(printAddress('tide-line', 'letter')).toBe(`${top}patterns/tide-line/tide-line-letter.pdf`)
  })
})
