import type { FaceName, FontFile, Fonts } from './face.ts'

const textFamily = 'atkinson-hyperlegible-next'
const titleFamily = 'literata'

/** Scripts in the order in which a missing letter is looked for. */
const scripts: Readonly<Record<string, readonly string[]>> = {
  [textFamily]: ['latin', 'latin-ext'],
  [titleFamily]: ['latin', 'latin-ext', 'vietnamese', 'greek', 'cyrillic'],
}

/** For signs and for Japanese names: of one cut, whatever the words around them look like. */
const last = [
  'noto-sans-math-latin-400-normal',
  'noto-sans-symbols-2-symbols-400-normal',
  'sawarabi-gothic-japanese-400-normal',
] as const

const cuts: Readonly<Record<FaceName, { readonly families: readonly string[]; readonly cut: string }>> = {
  text: { families: [textFamily, titleFamily], cut: '400-normal' },
  textBold: { families: [textFamily, titleFamily], cut: '600-normal' },
  textItalic: { families: [textFamily, titleFamily], cut: '400-italic' },
  textBoldItalic: { families: [textFamily, titleFamily], cut: '600-italic' },
  title: { families: [titleFamily], cut: '600-normal' },
}

/** Names of the files that set a face, in the order in which a letter is looked for: `literata-latin-600-normal`. */
function filesOf(face: FaceName): readonly string[] {
  const { families, cut } = cuts[face]
  return [
    ...families.flatMap((family) => (scripts[family] ?? []).map((script) => `${family}-${script}-${cut}`)),
    ...last,
  ]
}

const faceNames = ['text', 'textBold', 'textItalic', 'textBoldItalic', 'title'] as const

/** Names of all files of the project's typefaces. */
export const typefaceFiles: readonly string[] = [...new Set(faceNames.flatMap(filesOf))]

/** Of each face the file that has most of its letters. */
export const mainFiles: readonly string[] = faceNames.map((face) => filesOf(face)[0] ?? '')

/** Where a file of this name lies in the packages: `@fontsource/literata/files/literata-latin-600-normal.woff`. */
export function typefacePath(file: string): string {
  const family = [textFamily, titleFamily, 'noto-sans-math', 'noto-sans-symbols-2', 'sawarabi-gothic'].find((name) =>
    file.startsWith(`${name}-`),
  )
  return `@fontsource/${family}/files/${file}.woff`
}

/**
 * The project's typefaces, their files by name from wherever they come: Atkinson Hyperlegible Next for text and rows,
 * Literata for headings and for the letters that the first lacks, and others for signs.
 */
export function typefaces(fileOf: (name: string) => FontFile): Fonts {
  const files = new Map(typefaceFiles.map((name) => [name, fileOf(name)]))
  const faceOf = (face: FaceName): readonly FontFile[] => filesOf(face).flatMap((name) => files.get(name) ?? [])
  return {
    text: faceOf('text'),
    textBold: faceOf('textBold'),
    textItalic: faceOf('textItalic'),
    textBoldItalic: faceOf('textBoldItalic'),
    title: faceOf('title'),
  }
}
