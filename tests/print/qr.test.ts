import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import jsQR from 'jsqr'
import { afterAll, describe, expect, it } from 'vitest'
import { loadFonts } from '../../src/print/fonts.ts'
import type { PrintOptions } from '../../src/print/index.ts'
import { renderPdf } from '../../src/print/index.ts'
import { studio, tideLine } from './fixture.ts'
import { readPdf } from './read-pdf.ts'

const folder = mkdtempSync(join(tmpdir(), 'qr-'))
afterAll(() => rmSync(folder, { recursive: true }))

async function printed(page: PrintOptions['page'], form: PrintOptions['form'] = 'usual'): Promise<Uint8Array> {
  const { bytes } = await renderPdf(tideLine(), { paper: 'a4', form, fonts: loadFonts(), studio, page: page ?? null })
  return bytes
}

/** What a camera finds on the pages, drawn by poppler at 150 dots to the inch. */
function codesOn(bytes: Uint8Array, pages: number): readonly string[] {
  writeFileSync(join(folder, 'code.pdf'), bytes)
  return Array.from({ length: pages }, (_, index) => index + 1).flatMap((page) => {
    const words = ['-r', '150', '-gray', '-f', String(page), '-l', String(page), join(folder, 'code.pdf')]
    const picture = execFileSync('pdftoppm', words, { maxBuffer: 1e9 })
    // A PGM file: `P5`, width, height and the brightest grey, then a byte a dot.
    const [head = '', width = '0', height = '0'] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(picture.toString('latin1')) ?? []
    const dots = new Uint8ClampedArray(Number(width) * Number(height) * 4)
    for (const [index, grey] of picture.subarray(head.length).entries()) dots.set([grey, grey, grey, 255], index * 4)
    return jsQR(dots, Number(width), Number(height))?.data ?? []
  })
}

describe('the QR code of the page', () => {
  const address = 'https://lowwater.example/patterns/tide-line/'

  it.each(['usual', 'large'] as const)('leads there, and says so: %s', async (form) => {
    const bytes = await printed({ address, code: true }, form)
    const { pages } = await readPdf(bytes)
    expect(codesOn(bytes, pages.length)).toEqual([address])
    expect(pages.flatMap((page) => page.structure).join()).toContain(`Figure "QR code that leads to ${address}"`)
  })

  it('is read where the address is long, and has letters of other scripts', async () => {
    const long = `https://lowwater.example/muster/${'fläche-'.repeat(12)}ende/`
    const bytes = await printed({ address: long, code: true })
    expect(codesOn(bytes, 3)).toEqual([long])
  })

  it.each([
    ['without it', { address, code: false }, 'lowwater.example/patterns/tide-line'],
    ['without a page', null, 'hello@lowwater.example'],
  ] as const)('is left out %s', async (_, page, place) => {
    const bytes = await printed(page)
    const { pages } = await readPdf(bytes)
    expect(codesOn(bytes, pages.length)).toEqual([])
    expect(pages[0]?.text).toContain(`Low Water Studio · ${place}`)
  })
})
