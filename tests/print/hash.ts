import { createHash } from 'node:crypto'
import { loadFonts } from '../../src/print/fonts.ts'
import { renderPdf } from '../../src/print/index.ts'
import { studio, threeSizes, tideLine } from './fixture.ts'

/** Prints the digests of two print-outs: run by a test in other places of the world. */
for (const published of ['2026-03-14', null]) {
  const { bytes } = await renderPdf(tideLine(threeSizes, { published }), { paper: 'a4', fonts: loadFonts(), studio })
  process.stdout.write(`${createHash('sha256').update(bytes).digest('hex')}\n`)
}
