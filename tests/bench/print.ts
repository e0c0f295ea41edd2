import { readFileSync, statSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { chromium } from 'playwright-core'
import { printPictures } from '../../plugins/print-pictures.ts'
import { besideDraft } from '../../plugins/read-beside.ts'
import { readDraft } from '../../plugins/read-draft.ts'
import { deflate } from '../../src/print/deflate.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import { renderPdf } from '../../src/print/index.ts'
import { loadSolver } from '../../src/solver/index.ts'
import { serveFolder } from '../browser/serve.ts'

const project = resolve(import.meta.dirname, '../..')

export interface PrintFigures {
  readonly slug: string
  readonly ours: number
  readonly chromium: number
  readonly bytes: number
  readonly chromiumBytes: number
}

/** One PDF of a demo pattern against Chromium's print of the same built page, both after a warm-up. */
export async function printFigures(slug: string): Promise<PrintFigures> {
  const ours = await ownPrint(slug)
  const theirs = await chromiumPrint(slug)
  const bytes = statSync(join(project, 'site/patterns', slug, `${slug}-a4.pdf`)).size
  return { slug, ours, chromium: theirs.milliseconds, bytes, chromiumBytes: theirs.bytes }
}

/** As the site's build does it, on one core: pictures are ready, and the file is packed. */
async function ownPrint(slug: string): Promise<number> {
  const { pattern, images } = await readDemo(slug)
  const page = { address: `https://studio.example/patterns/${slug}/`, code: true }
  const options = { paper: 'a4', studio: { name: 'Studio', address: null }, page, images, deflate } as const
  return medianOf(() => renderPdf(pattern, { ...options, fonts: loadFonts() }), 15)
}

async function readDemo(slug: string) {
  const path = join(project, 'content/patterns', slug, 'index.md')
  const solver = await loadSolver()
  const pattern = readDraft(path, slug, readFileSync(path, 'utf8'), solver, besideDraft(path)).outcome.value
  if (pattern === null) throw new Error(`${path} can't be read`)
  return { pattern, images: await printPictures(pattern, path, 'usual') }
}

async function chromiumPrint(slug: string): Promise<{ milliseconds: number; bytes: number }> {
  const site = await serveFolder(join(project, 'site'))
  const browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu'],
  })
  try {
    const page = await browser.newPage()
    await page.goto(`${site.origin}/patterns/${slug}/`)
    const print = () => page.pdf({ format: 'A4', tagged: true })
    const bytes = (await print()).length
    return { milliseconds: await medianOf(print, 7), bytes }
  } finally {
    await browser.close()
    await site.close()
  }
}

async function medianOf(work: () => Promise<unknown>, runs: number): Promise<number> {
  for (let run = 0; run < 3; run++) await work()
  const times: number[] = []
  for (let run = 0; run < runs; run++) {
    const start = performance.now()
    await work()
    times.push(performance.now() - start)
  }
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)] ?? 0
}
