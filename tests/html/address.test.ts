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
    const folder = `${top}patterns/tide-line/`
    expect(printAddress('tide-line', { form: 'usual', paper: 'letter' })).toBe(`${folder}tide-line-letter.pdf`)
    expect(printAddress('tide-line', { form: 'large', paper: 'a4' })).toBe(`${folder}tide-line-large-a4.pdf`)
  })
})
