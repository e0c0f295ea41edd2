import type { Font } from 'fontkit'
import * as fontkit from 'fontkit'
import { readContent } from './content.ts'
import type { MarkedPage } from './marks.ts'
import { markedContent } from './marks.ts'
import type { PdfDictionary, PdfFile } from './objects.ts'
import { openPdf } from './objects.ts'
import type { Element } from './structure.ts'
import { elementsOf } from './structure.ts'

/** A page with what is drawn on it. */
export interface OpenedPage extends MarkedPage {
  readonly entries: PdfDictionary
  readonly annotations: readonly PdfDictionary[]
}

/** A font with the characters that it has been given for its codes. */
export interface OpenedFont {
  readonly entries: PdfDictionary
  readonly descendant: PdfDictionary
  readonly descriptor: PdfDictionary
  readonly program: Font
  readonly characters: ReadonlyMap<number, string>
  /** In thousandths of the type size, by code. */
  readonly widths: ReadonlyMap<number, number>
  /** Codes that pages show in it. */
  readonly shown: ReadonlySet<number>
}

export interface OpenedFile {
  readonly file: PdfFile
  readonly elements: readonly Element[]
  readonly pages: readonly OpenedPage[]
  readonly fonts: readonly OpenedFont[]
}

/** Opens a file with all that the rules of accessibility speak of. */
export function openFile(path: string): OpenedFile {
  const file = openPdf(path)
  const pages = file.pages.map((entries) => ({
    entries,
    annotations: file.array(entries['/Annots']).map(file.dictionary),
    ...markedContent(readContent(file.stream(entries['/Contents']))),
  }))
  return { file, elements: elementsOf(file), pages, fonts: fontsOf(file, pages) }
}

function fontsOf(file: PdfFile, pages: readonly OpenedPage[]): readonly OpenedFont[] {
  const shown = new Map<PdfDictionary, Set<number>>()
  for (const page of pages) {
    const fonts = file.dictionary(file.dictionary(page.entries['/Resources'])['/Font'])
    for (const { kind, font, codes } of page.drawn) {
      if (kind !== 'text') continue
      const entries = file.dictionary(fonts[font])
      const known = shown.get(entries) ?? new Set<number>()
      for (const code of codes) known.add(code)
      shown.set(entries, known)
    }
  }
  return [...shown].map(([entries, codes]) => fontOf(file, entries, codes))
}

function fontOf(file: PdfFile, entries: PdfDictionary, shown: ReadonlySet<number>): OpenedFont {
  const descendant = file.dictionary(file.array(entries['/DescendantFonts'])[0])
  const descriptor = file.dictionary(descendant['/FontDescriptor'])
  const program = fontkit.create(file.stream(descriptor['/FontFile2']))
  if (program.type !== 'TTF') throw new Error('not a single font')
  const characters = charactersOf(Buffer.from(file.stream(entries['/ToUnicode'])).toString('latin1'))
  return { entries, descendant, descriptor, program, characters, widths: widthsOf(file, descendant), shown }
}

/** `<0003> <0020>` between `beginbfchar` and `endbfchar`, the second in UTF-16. */
function charactersOf(map: string): ReadonlyMap<number, string> {
  const lines = [...map.matchAll(/^<([0-9a-f]{4})> <([0-9a-f]*)>$/gm)]
  return new Map(
    lines.map(([, code = '', text = '']) => [
      Number.parseInt(code, 16),
      String.fromCharCode(...(text.match(/.{4}/g) ?? []).map((unit) => Number.parseInt(unit, 16))),
    ]),
  )
}

/** `12 [500 520]`: the first code, then a width for it and each after it. */
function widthsOf(file: PdfFile, descendant: PdfDictionary): ReadonlyMap<number, number> {
  const widths = new Map<number, number>()
  const entries = file.array(descendant['/W'])
  for (let index = 0; index + 1 < entries.length; index += 2) {
    for (const [after, width] of file.array(entries[index + 1]).entries()) {
      widths.set(Number(entries[index]) + after, Number(width))
    }
  }
  return widths
}
