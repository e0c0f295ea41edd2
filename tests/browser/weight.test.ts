import { gzipSync } from 'node:zlib'
import { describe, expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { notFoundPage, pages } from './site.ts'

const visit = visitor()

/** What comes compressed from the start. */
const packed = /woff2|jpeg|png|webp|pdf/

/** Bytes of each file but pictures that a page asks for by itself, as a web host sends them. */
async function weigh(path: string): Promise<Record<string, number>> {
  return visit('about:blank', {}, async (page) => {
    const weighed: Promise<[string, number]>[] = []
    page.on('response', (response) => {
      const type = response.headers()['content-type'] ?? ''
      if (response.request().resourceType() === 'image') return
      const bytes = response.body().then((body) => (packed.test(type) ? body : gzipSync(body, { level: 9 })).length)
      weighed.push(bytes.then((length) => [new URL(response.url()).pathname, length]))
    })
    await page.goto(path, { waitUntil: 'networkidle' })
    return Object.fromEntries(await Promise.all(weighed))
  })
}

describe('a page with its style, typefaces and script comes in less than 60 kB', () => {
  test.each([...pages, notFoundPage])('%s', async (path) => {
    const files = await weigh(path)
    const total = Object.values(files).reduce((sum, length) => sum + length, 0)
    expect(Object.keys(files).filter((file) => file.endsWith('.woff2')).length).toBeGreaterThan(1)
    expect(total, JSON.stringify(files)).toBeLessThan(60_000)
  })
})
