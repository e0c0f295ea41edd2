import { afterEach, describe, expect, test, vi } from 'vitest'
import { patternAddress, printAddress, siteAddress } from '../../src/layouts/address.ts'
import type { PrintOut } from '../../src/layouts/print-outs.ts'

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
    const address = (printOut: PrintOut): string => printAddress({ slug: 'tide-line', terms: 'us' }, printOut)
    expect(address({ form: 'usual', paper: 'letter', terms: 'own' })).toBe(`${folder}tide-line-letter.pdf`)
    expect(address({ form: 'large', paper: 'a4', terms: 'own' })).toBe(`${folder}tide-line-large-a4.pdf`)
    expect(address({ form: 'counts', paper: 'a4', terms: 'other' })).toBe(`${folder}tide-line-counts-uk-a4.pdf`)
  })
})
