import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { memoryPages, validateXML } from 'xmllint-wasm'
import { sitemap } from '../../src/announce/sitemap.ts'
import { shelve } from '../../src/finding/shelf.ts'
import { siteFolder } from '../browser/site.ts'
import { pattern } from '../finding/pattern.ts'

/** The schema of sitemap protocol 0.9 as sitemaps.org publishes it (2008), in the copy that the package `sitemap` brings. */
const schema = readFileSync('node_modules/sitemap/schema/sitemap.xsd', 'utf8')

async function faults(contents: string): Promise<readonly string[]> {
  const { errors } = await validateXML({
    xml: { fileName: 'sitemap.xml', contents },
    schema: { fileName: 'sitemap.xsd', contents: schema },
    initialMemoryPages: 32 * memoryPages.MiB,
  })
  return errors.map(({ message }) => message)
}

const addressOf = (path: string): string => new URL(path, 'https://studio.example/').href

describe('the sitemap', () => {
  it('keeps to its schema, with days and without', async () => {
    const patterns = [pattern('mat', { kinds: ['mat & more'], published: '2026-03-14' }), pattern('hat')]
    const text = sitemap(shelve(patterns), addressOf)
    expect(await faults(text)).toEqual([])
    expect(text).toContain('<loc>https://studio.example/patterns/hat/</loc>')
    expect(text.match(/<lastmod>2026-03-14<\/lastmod>/g)).toHaveLength(3)
  })

  it('is refused by the schema where a day is none', async () => {
    const text = sitemap(shelve([pattern('mat', { published: '14 March' })]), addressOf)
    expect(await faults(text)).not.toEqual([])
  })

  it('of the built site keeps to its schema', async () => {
    expect(await faults(readFileSync(join(siteFolder, 'sitemap.xml'), 'utf8'))).toEqual([])
  })
})
