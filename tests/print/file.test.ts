import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Block } from '../../src/pattern/node.ts'
import { deflate } from '../../src/print/deflate.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import { renderPdf } from '../../src/print/index.ts'
import { inlines, longBody, manySizes, studio, threeSizes, tideLine } from './fixture.ts'
import { png } from './png.ts'
import type { FoundDocument } from './read-pdf.ts'
import { readPdf } from './read-pdf.ts'

const folder = mkdtempSync(join(tmpdir(), 'print-'))
afterAll(() => rmSync(folder, { recursive: true }))

const title = 'Tide <Line> & “Back”'
const cover = { src: 'cover.png', alt: 'The cowl on sand' }
const cases = {
  three: tideLine(threeSizes, { title, cover }),
  fifteen: tideLine(manySizes(15)),
  long: tideLine(threeSizes, { body: longBody(400, 3) }),
} as const

async function print(name: keyof typeof cases): Promise<Uint8Array> {
  const options = { paper: 'a4', fonts: loadFonts(), deflate, studio, images: { 'cover.png': png(30, 40) } } as const
  return (await renderPdf(cases[name], options)).bytes
}

const fileOf = (name: string): string => join(folder, `${name}.pdf`)
const run = (program: string, ...words: string[]): string => execFileSync(program, words, { encoding: 'utf8' })

const names = ['three', 'fifteen', 'long'] as const

beforeAll(async () => {
  for (const name of names) writeFileSync(fileOf(name), await print(name))
})

describe.each(names)('independent readers of the file: %s', (name) => {
  it('qpdf finds no fault in it', () => {
    expect(run('qpdf', '--check', fileOf(name))).toContain('No syntax or stream encoding errors found')
  })

  it('pdffonts finds every face embedded, in part, with its characters known', () => {
    const [, , ...fonts] = run('pdffonts', fileOf(name)).trim().split('\n')
    expect(fonts.length).toBeGreaterThan(1)
    expect(fonts.filter((font) => !/ yes yes yes +\d+ +\d+$/.test(font))).toEqual([])
  })

  it('pdfinfo finds it tagged, of version 1.7', () => {
    const info = run('pdfinfo', fileOf(name))
    expect(info).toMatch(/^Tagged: +yes$/m)
    expect(info).toMatch(/^PDF version: +1\.7$/m)
  })
})

describe('what the file says of itself', () => {
  let found: FoundDocument
  beforeAll(async () => {
    found = await readPdf(await print('three'))
  })

  it('the title, in both places where a file keeps it', () => {
    expect(found.title).toBe(title)
    expect(found.xmpTitle).toBe(title)
    expect(run('pdfinfo', fileOf('three'))).toContain(`Title:           ${title}\n`)
  })

  it('the language', () => expect(found.language).toBe('en'))

  it('the outline: the facts, the pieces, their sections', () => {
    expect(found.outline).toEqual([
      title,
      '  Sizes',
      '  Materials',
      '  Safety',
      '  Gauge',
      '  Film',
      '  Abbreviations',
      '  Changes',
      '  Special stitches',
      '  Cowl',
      '    Blocking',
    ])
  })
})

describe('the structure, for readers who listen', () => {
  it('names every part of the body', async () => {
    const { pages } = await readPdf(await print('three'))
    expect(partsOf(pages.flatMap((page) => page.structure))).toBe(
      'P H1 P P Figure H2 P Table H2 L H2 P P H2 P H2 P H2 L H2 P H2 L H2 P L Div L H3 P Table BlockQuote P P P',
    )
  })

  it.each([
    ['a table has rows and header cells', ['Table', '  TR', '    TH of its Column', '    TH of its Column']],
    ['a measure heads its row', ['  TR', '    TH of its Row', '    TD', '    TD']],
    ['rows are a list of labels and steps', ['L', '  LI', '    Lbl', '    LBody', '  LI', '    Lbl', '    LBody']],
    ['a link stands in its paragraph', ['P', '  Link']],
    ['what is for some sizes is one part', ['Div', '  P', '  P', '  L', '    LI']],
    ['typed lines are code', ['P', '  Code']],
  ])('%s', async (_, lines) => {
    const { pages } = await readPdf(await print('three'))
    const all = pages.flatMap((page) => page.structure)
    const depths = all.flatMap((line) => /^ */.exec(line)?.[0].length ?? [])
    const starts = all.flatMap((line, index) => (line.trim() === lines[0]?.trim() ? [index] : []))
    const found = starts.some((start) => {
      const cut = (depths[start] ?? 0) - (/^ */.exec(lines[0] ?? '')?.[0].length ?? 0)
      return lines.every((line, index) => all[start + index]?.slice(cut) === line)
    })
    expect(found).toBe(true)
  })

  it('has the header of a table once, though each page shows it', async () => {
    const row = [inlines('12'), inlines('14')]
    const head = [inlines('Hem'), inlines('Neck')]
    const table: Block = { type: 'table', align: [], head, rows: Array.from({ length: 40 }, () => row) }
    const options = { paper: 'a4', fonts: loadFonts(), studio } as const
    const { bytes } = await renderPdf(tideLine(threeSizes, { body: [table] }), options)
    writeFileSync(fileOf('table'), bytes)
    const { pages } = await readPdf(bytes)
    expect(pages.filter(({ text }) => text.includes('Hem Neck'))).toHaveLength(2)
    expect(run('pdfinfo', '-struct-text', fileOf('table')).match(/"Hem ?"/g)).toHaveLength(1)
  })

  it('reads as it did: the tree that poppler finds', async () => {
    // Numbers of objects are no matter.
    const tree = run('pdfinfo', '-struct-text', fileOf('three')).replace(/Object \d+ 0/g, 'Object')
    await expect(tree).toMatchFileSnapshot('golden/three-sizes.txt')
  })

  it('is whole where a list goes over pages', async () => {
    const { pages } = await readPdf(await print('long'))
    const labels = pages.flatMap((page) => page.structure.filter((line) => line.trim() === 'Lbl'))
    expect(labels.length).toBeGreaterThanOrEqual(400)
  })
})

/** `H1 P …`: the parts of the document, over all pages. */
const partsOf = (structure: readonly string[]): string =>
  [...structure.join('\n').matchAll(/^ {4}(\S+)/gm)].map(([, role]) => role).join(' ')

describe('the same pattern gives the same bytes', () => {
  it.each(names)('twice in one run: %s', async (name) => {
    expect(Buffer.from(await print(name)).equals(Buffer.from(await print(name)))).toBe(true)
  })

  it('on another day, in other time zones and languages', () => {
    const places = [
      { TZ: 'Pacific/Kiritimati', LC_ALL: 'de_DE.UTF-8' },
      {
        TZ: 'Pacific/Pago_Pago',
        LC_ALL: 'tr_TR.UTF-8',
        NODE_OPTIONS: `--import=${join(import.meta.dirname, '../another-day.mjs')}`,
      },
    ]
    const digests = places.map((place) =>
      execFileSync(process.execPath, [join(import.meta.dirname, 'hash.ts')], {
        encoding: 'utf8',
        env: { ...process.env, ...place },
      }),
    )
    expect(digests[0]).toMatch(/^([0-9a-f]{64}\n){2}$/)
    expect(digests[1]).toBe(digests[0])
  })

  it('whatever was printed before it', async () => {
    const options = { paper: 'a4', studio } as const
    // The same files in another object: nothing is remembered of them.
    const afresh = await renderPdf(cases.three, { ...options, fonts: { ...loadFonts() } })
    const fonts = { ...loadFonts() }
    // Faces are opened in another order, and other letters of them met first.
    await renderPdf(tideLine(threeSizes, { title: 'Ж\u00a0Ő Ω\u00a0ě', summary: 'a\u00a0b−c' }), { ...options, fonts })
    const later = await renderPdf(cases.three, { ...options, fonts })
    expect(Buffer.from(later.bytes).equals(Buffer.from(afresh.bytes))).toBe(true)
  })

  it('and other bytes where a word or the paper differs', async () => {
    const options = { paper: 'a4', fonts: loadFonts(), studio } as const
    const bytes = async (pattern: typeof cases.three, paper: 'a4' | 'letter'): Promise<string> =>
      Buffer.from((await renderPdf(pattern, { ...options, paper })).bytes).toString('base64')
    const first = await bytes(tideLine(), 'a4')
    expect(await bytes(tideLine(threeSizes, { edition: '1.2' }), 'a4')).not.toBe(first)
    expect(await bytes(tideLine(), 'letter')).not.toBe(first)
  })
})
