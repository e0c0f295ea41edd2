import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { FaceName, Fonts } from './face.ts'
import { unwrapWoff } from './woff.ts'

const textFamily = 'atkinson-hyperlegible-next'
const titleFamily = 'literata'

/** Scripts in the order in which a missing letter is looked for. */
const scripts: Readonly<Record<string, readonly string[]>> = {
  [textFamily]: ['latin', 'latin-ext'],
  [titleFamily]: ['latin', 'latin-ext', 'vietnamese', 'greek', 'cyrillic'],
}

const cuts: Readonly<Record<FaceName, { readonly families: readonly string[]; readonly cut: string }>> = {
  text: { families: [textFamily, titleFamily], cut: '400-normal' },
  textBold: { families: [textFamily, titleFamily], cut: '600-normal' },
  textItalic: { families: [textFamily, titleFamily], cut: '400-italic' },
  textBoldItalic: { families: [textFamily, titleFamily], cut: '600-italic' },
  title: { families: [titleFamily], cut: '600-normal' },
}

let loaded: Fonts | undefined

/**
 * The project's typefaces, read from the installed packages once: Atkinson Hyperlegible Next for text
 * and rows, Literata for headings and for the letters that the first lacks. The bytes may come from
 * anywhere else.
 */
export function loadFonts(): Fonts {
  loaded ??= {
    text: read('text'),
    textBold: read('textBold'),
    textItalic: read('textItalic'),
    textBoldItalic: read('textBoldItalic'),
    title: read('title'),
  }
  return loaded
}

const files = new Map<string, Uint8Array>()

function read(name: FaceName): readonly Uint8Array[] {
  const { families, cut } = cuts[name]
  return families.flatMap((family) => (scripts[family] ?? []).map((script) => readFile(family, `${script}-${cut}`)))
}

function readFile(family: string, cut: string): Uint8Array {
  const file = `${family}/files/${family}-${cut}.woff`
  const bytes = files.get(file) ?? unwrapWoff(readFileSync(fileURLToPath(import.meta.resolve(`@fontsource/${file}`))))
  files.set(file, bytes)
  return bytes
}
