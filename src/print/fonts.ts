import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { FaceName, FontFile, Fonts } from './face.ts'
import { unwrapWoff } from './woff.ts'

const textFamily = 'atkinson-hyperlegible-next'
const titleFamily = 'literata'

/** Scripts in the order in which a missing letter is looked for. */
const scripts: Readonly<Record<string, readonly string[]>> = {
  [textFamily]: ['latin', 'latin-ext'],
  [titleFamily]: ['latin', 'latin-ext', 'vietnamese', 'greek', 'cyrillic'],
}

/** For signs and for Japanese names: of one cut, whatever the words around them look like. */
const last = ['noto-sans-math/latin', 'noto-sans-symbols-2/symbols', 'sawarabi-gothic/japanese'] as const

const cuts: Readonly<Record<FaceName, { readonly families: readonly string[]; readonly cut: string }>> = {
  text: { families: [textFamily, titleFamily], cut: '400-normal' },
  textBold: { families: [textFamily, titleFamily], cut: '600-normal' },
  textItalic: { families: [textFamily, titleFamily], cut: '400-italic' },
  textBoldItalic: { families: [textFamily, titleFamily], cut: '600-italic' },
  title: { families: [titleFamily], cut: '600-normal' },
}

let named: Fonts | undefined

/**
 * The project's typefaces, read from the installed packages once, each file when a letter of it is first asked for:
 * Atkinson Hyperlegible Next for text and rows, Literata for headings and for the letters that the first lacks, and
 * others for signs. The bytes may come from anywhere else.
 */
export function loadFonts(): Fonts {
  named ??= {
    text: filesOf('text'),
    textBold: filesOf('textBold'),
    textItalic: filesOf('textItalic'),
    textBoldItalic: filesOf('textBoldItalic'),
    title: filesOf('title'),
  }
  return named
}

const files = new Map<string, FontFile>()

function filesOf(name: FaceName): readonly FontFile[] {
  const { families, cut } = cuts[name]
  const own = families.flatMap((family) => (scripts[family] ?? []).map((script) => fileOf(family, script, cut)))
  const others = last.map((place) => {
    const [family = '', script = ''] = place.split('/')
    return fileOf(family, script, '400-normal')
  })
  return [...own, ...others]
}

function fileOf(family: string, script: string, cut: string): FontFile {
  const name = `${family}/files/${family}-${script}-${cut}.woff`
  const file =
    files.get(name) ?? (() => unwrapWoff(readFileSync(fileURLToPath(import.meta.resolve(`@fontsource/${name}`)))))
  files.set(name, file)
  return file
}
