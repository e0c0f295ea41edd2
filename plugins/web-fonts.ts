import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { basename, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'
import subsetFont from 'subset-font'

const faces = [
  '@fontsource/literata/files/literata-latin-600-normal.woff2',
  '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff2',
  '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-italic.woff2',
  '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-600-normal.woff2',
] as const

/** What nearly every page is written with; `src/styles/fonts.css` gives the same ranges. */
export const basic = [
  [0x20, 0x7e],
  [0xa0, 0xa0],
  [0xb0, 0xb0],
  [0xb7, 0xb7],
  [0xbc, 0xbe],
  [0xd7, 0xd7],
  [0xe9, 0xe9],
  [0x2009, 0x2009],
  [0x2010, 0x2014],
  [0x2018, 0x201d],
  [0x2022, 0x2022],
  [0x2026, 0x2026],
  [0x2212, 0x2212],
] as const

const letters = basic
  .flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, index) => first + index))
  .map((code) => String.fromCodePoint(code))
  .join('')

/**
 * Cuts the letters that nearly every page is written with out of each face, into files of little more than half the
 * size: `~basic/…` in style sheets. The whole faces are loaded where a page has other letters.
 */
export function webFonts(): AstroIntegration {
  return {
    name: 'web-fonts',
    hooks: {
      'astro:config:setup': async ({ config, updateConfig }) => {
        const folder = await cutFaces(fileURLToPath(new URL('.astro/fonts/', config.root)))
        updateConfig({ vite: { resolve: { alias: [{ find: '~basic', replacement: folder }] } } })
      },
    },
  }
}

/** Headings are set in the face's plain letters: its small capitals and other figures would be a fifth of the file. */
const plain = /^literata/

/** Cutting takes seconds, so what was cut is kept for as long as the faces and the letters stay the same. */
async function cutFaces(folder: string): Promise<string> {
  const require = createRequire(import.meta.url)
  const whole = faces.map((face) => ({ name: basename(face), bytes: readFileSync(require.resolve(face)) }))
  const digest = createHash('sha256').update(letters + plain.source)
  for (const { bytes } of whole) digest.update(bytes)
  const cut = join(folder, digest.digest('hex').slice(0, 12))
  mkdirSync(cut, { recursive: true })
  for (const { name, bytes } of whole) {
    const path = join(cut, name)
    const options = { targetFormat: 'woff2', noLayoutClosure: plain.test(name) } as const
    if (!existsSync(path)) writeFileSync(path, await subsetFont(bytes, letters, options))
  }
  return cut
}
