import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { siteAddressIn } from '../../plugins/site-address.ts'
import { readPdf } from '../print/read-pdf.ts'
import { build, copyProject, emptySite } from './project-copy.ts'

const slug = 'slack-tide-cowl'
const studio = (address: string): string => `name: Low Water Studio\ntagline: Patterns.\nabout: A shed.\n${address}`

/** A site of one pattern whose studio gives this address. */
function siteWith(address: string): {
  root: string
  at: (path: string) => string
  read: (path: string) => string
  has: (path: string) => boolean
} {
  const root = copyProject('address', ['content'])
  for (const other of ['bollard-hat', 'causeway-cushion', 'sluice-gate-pullover'])
    rmSync(join(root, 'content/patterns', other), { recursive: true, force: true })
  writeFileSync(join(root, 'content/studio.yaml'), studio(address))
  const { status, stderr } = build(root)
  if (status !== 0) throw new Error(stderr)
  const at = (path: string): string => join(root, 'site', path)
  return { root, at, read: (path) => readFileSync(at(path), 'utf8'), has: (path) => existsSync(at(path)) }
}

describe('where the site stands', () => {
  let root: string
  beforeAll(() => {
    root = emptySite('studio')
  })
  afterAll(() => rmSync(root, { recursive: true, force: true }))

  it.each([
    ['address: https://lowwater.example', { site: 'https://lowwater.example', base: '/' }],
    ['address: https://lowwater.example/', { site: 'https://lowwater.example', base: '/' }],
    [
      'address: http://lowwater.example:8080/crochet/patterns/',
      { site: 'http://lowwater.example:8080', base: '/crochet/patterns' },
    ],
    ['address: mailto:us@lowwater.example', null],
    ['address: lowwater.example', null],
    ['address: "https://"', null],
    ['address: 5', null],
    ['', null],
    ['address: [', null],
  ])('%s', (line, expected) => {
    writeFileSync(join(root, 'studio.yaml'), studio(line))
    expect(siteAddressIn(join(root, 'studio.yaml'))).toEqual(expected)
    expect(siteAddressIn(join(root, 'none.yaml'))).toBe(null)
  })
})

describe('a site that does not know its address', () => {
  let site: ReturnType<typeof siteWith>
  beforeAll(() => {
    site = siteWith('')
  })
  afterAll(() => rmSync(site.root, { recursive: true, force: true }))

  it('leaves out all that has to name a page in full, and nothing else', () => {
    const page = site.read(`patterns/${slug}/index.html`)
    for (const file of ['feed.xml', 'sitemap.xml', 'card.jpg', `patterns/${slug}/card.jpg`]) {
      expect(site.has(file), file).toBe(false)
    }
    expect(site.read('robots.txt')).toBe('User-agent: *\nDisallow:\n')
    expect(page).not.toMatch(
      /rel="canonical"|property="og:|feed\.xml|https?:\/\/(?!schema\.org|lowwater\.example\/films\/)/,
    )
    expect(page).toContain(`"url":"/patterns/${slug}/"`)
    expect(site.has('patterns/kind/cowl/index.html')).toBe(true)
  })
})

describe('a site below the top of its host', () => {
  let site: ReturnType<typeof siteWith>
  beforeAll(() => {
    site = siteWith('address: https://lowwater.example/crochet/\nprint: {terms: both}')
  })
  afterAll(() => rmSync(site.root, { recursive: true, force: true }))

  it('has all its own addresses there', () => {
    const page = site.read(`patterns/${slug}/index.html`)
    const own = [...page.matchAll(/(?:href|src)="(\/[^"]*)"/g)].map(([, address]) => address ?? '')
    expect(own.length).toBeGreaterThan(5)
    expect(own.filter((address) => !address.startsWith('/crochet/'))).toEqual([])
    expect(page).toContain(`<link rel="canonical" href="https://lowwater.example/crochet/patterns/${slug}/">`)
    expect(site.read('robots.txt')).toContain('Sitemap: https://lowwater.example/crochet/sitemap.xml')
    expect(site.read('sitemap.xml')).toContain(`<loc>https://lowwater.example/crochet/patterns/${slug}/</loc>`)
    expect(site.read('feed.xml')).toContain('<id>https://lowwater.example/crochet/</id>')
  })

  it('prints in the terms of both countries where the studio wants that', async () => {
    const page = site.read(`patterns/${slug}/index.html`)
    for (const form of ['', '-large', '-counts'])
      expect(page).toContain(`href="/crochet/patterns/${slug}/${slug}${form}-uk-letter.pdf"`)
    const { text } = await readPdf(new Uint8Array(readFileSync(site.at(`patterns/${slug}/${slug}-uk-a4.pdf`))))
    expect(text).toContain('Edition 1.1 · UK terms')
    expect(text).toContain('Ch 1, dc in each ch around')
    expect(text).not.toMatch(/\bsc\b/)
  })
})
