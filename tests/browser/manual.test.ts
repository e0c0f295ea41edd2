import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../src/diagnostic/index.ts'
import { pages, siteFolder } from './site.ts'

const read = (path: string) => readFileSync(join(siteFolder, path, 'index.html'), 'utf8')
const manual = read('manual/findings')

describe('the manual in the built site', () => {
  it('has a place for every kind of finding', () => {
    const missing = Object.keys(catalogue).filter((code) => !manual.includes(`<h3 id="${code}">`))
    expect(missing).toEqual([])
  })

  it('asks not to be found, and no page that a reader sees leads to it', () => {
    expect(manual).toContain('<meta name="robots" content="noindex">')
    const others = pages.filter((path) => path !== '/manual/findings/')
    expect(others.filter((path) => read(path).includes('manual/'))).toEqual([])
  })

  it('has no script of its own', () => {
    expect(manual.slice(manual.indexOf('<main'), manual.indexOf('</main>'))).not.toMatch(/<script|\son\w+=/)
  })
})
