import { readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { LedgerRow } from '../../src/rows/ledger.ts'
import { dictionaryFor, printStitch } from '../../src/rows/terms/dictionary.ts'
import { demoDrafts, readDemo } from '../demo-drafts.ts'
import { draftInOtherTerms } from './other-terms.ts'

const drafts = [...demoDrafts, ...shapes()]

/** Textbook shapes, in US and UK terms. */
function shapes(): [string, string][] {
  const folder = resolve('tests/property/shapes')
  return readdirSync(folder).map((name) => [name, shapeDraft(readFileSync(join(folder, name), 'utf8'))])
}

/** A shape has a line for its sizes or terms where it needs them. */
function shapeDraft(text: string): string {
  const sizes = /^sizes: .*$/m.exec(text)?.[0] ?? 'sizes: [One size]'
  const terms = /^terms: .*$/m.exec(text)?.[0] ?? 'terms: us'
  return `---\ntitle: Shape\n${sizes}\n${terms}\n---\n\n${text.replace(/^(?:sizes|terms): .*\n/gm, '')}`
}

/** What a row makes, with its stitches by what they are, not by what they are called. */
function made(row: LedgerRow, terms: 'us' | 'uk') {
  const { piece, label, side, status, total, left, agrees } = row
  const counts = Object.fromEntries(Object.entries(row.counts).map(([name, bySize]) => [inUs(name, terms), bySize]))
  return { piece: piece.toLowerCase(), label, side, status, total, counts, left, agrees }
}

function inUs(name: string, terms: 'us' | 'uk'): string {
  const [, stitch = name, legs = ''] = /^(\p{L}+)(\d+tog)$/u.exec(name) ?? []
  const found = dictionaryFor(terms).stitches.get(stitch.toLowerCase())
  return found === undefined ? name : printStitch(dictionaryFor('us'), found) + legs
}

function worked(name: string, text: string) {
  const { value, diagnostics } = readDemo(name, text).outcome
  if (value === null) throw new Error(`${name} can’t be used: ${JSON.stringify(diagnostics)}`)
  return value
}

describe('what a page shows in the other country’s terms is read and worked as the same', () => {
  it.each(drafts)('%s', (name, text) => {
    const pattern = worked(name, text)
    const swatch = /^swatch:.*\n(?: .*\n)*/m.exec(text)?.[0] ?? ''
    const other = worked(name, draftInOtherTerms(pattern, swatch))
    expect(pattern.rows.length).toBeGreaterThan(0)
    expect(other.rows.map((row) => made(row, other.terms))).toEqual(pattern.rows.map((row) => made(row, pattern.terms)))
  })
})
