import { type Choice, chosen } from '../pattern/chosen.ts'
import type { Block } from '../pattern/node.ts'
import type { Pattern } from '../pattern/pattern.ts'
import { setBlocks } from './block.ts'
import { createComposer } from './compose.ts'
import type { Composer } from './composer.ts'
import type { PageAddress } from './corrections.ts'
import { setCountSheet } from './count-sheet.ts'
import { createDocument, finishDocument } from './document.ts'
import type { Deflate } from './embed.ts'
import { readAloud } from './expansion.ts'
import type { Fonts } from './face.ts'
import type { Furniture, Studio } from './furniture.ts'
import { setFurniture } from './furniture.ts'
import { compact, everyday, type Look, large } from './look.ts'
import { setMasthead } from './masthead.ts'
import { setNotes } from './notes.ts'
import { setOverview } from './overview.ts'
import type { SetPage } from './paginate.ts'
import { paginate } from './paginate.ts'
import type { Sheet } from './pen.ts'
import { Pen } from './pen.ts'
import type { Strip } from './strip.ts'

/** The print-outs of a pattern: the usual one, one in large print, and its counts alone on a page. */
export type Form = 'usual' | 'large' | 'counts'

export interface PrintOptions {
  readonly paper: 'a4' | 'letter'
  /** The usual print-out where it is left out. */
  readonly form?: Form
  /** One size, terms, units; where it is left out, all sizes as the draft has them. */
  readonly choice?: Choice
  readonly fonts: Fonts
  readonly studio: Studio
  /** The pattern's page, for corrections; not spoken of where it is left out. */
  readonly page?: PageAddress | null
  /** Numbers of many sizes stand in columns below their rows unless this is `brackets`. */
  readonly numbers?: 'columns' | 'brackets'
  /** Bytes of the pictures by the `src` that the pattern gives them; PNG and JPEG are drawn. */
  readonly images?: Readonly<Record<string, Uint8Array>>
  /** Packs bytes as the filter `FlateDecode` wants them. Without it the file is about twice as large. */
  readonly deflate?: Deflate
}

export interface Printed {
  readonly bytes: Uint8Array
  /** Characters that no face has, each once, in the order in which they were met; a question mark is printed. */
  readonly missing: readonly string[]
}

/** ISO 216 A4 and ANSI letter, in points. */
const sheets = {
  a4: { width: 595.28, height: 841.89 },
  letter: { width: 612, height: 792 },
} as const

/** What a form looks like, and what the foot of its pages calls it. */
const forms: Readonly<Record<Form, { readonly look: Look; readonly words: string | null }>> = {
  usual: { look: everyday, words: null },
  large: { look: large, words: 'Large print' },
  counts: { look: compact, words: 'Count sheet' },
}

const asWritten: Choice = { size: null, terms: 'own', units: 'both' }

/** Prints a pattern: an overview page, then the body; or its counts. The same input gives the same bytes. */
export async function renderPdf(whole: Pattern, options: PrintOptions): Promise<Printed> {
  const { studio, form = 'usual', page = null, choice = asWritten } = options
  const sheet = sheets[options.paper]
  const pattern = chosen(whole, choice)
  const { look } = forms[form]
  const size = pattern.sizes.length < whole.sizes.length ? (pattern.sizes[0] ?? null) : null
  const words = editionWords(form, size, pattern.terms === whole.terms ? null : pattern.terms)
  const document = createDocument(pattern, studio.name, words)
  const composer = createComposer(pattern, options, look, document, sheet)
  const { area } = composer
  const parts = form === 'counts' ? setCountSheet(pattern, composer) : setSheet(pattern, options, composer)
  const pages = paginate(parts, area)
  const furniture = setFurniture(pattern, { studio, form: words, page: page?.address ?? null, size }, composer, sheet)
  const deflate = options.deflate ?? null
  const pen = new Pen(document, readAloud(pattern.abbreviations), deflate)
  drawPages(pen, sheet, pages, look.margin.top, area, furniture)
  return { bytes: await finishDocument(document, deflate), missing: [...composer.missing] }
}

/** What tells a print-out from the usual one, `Large print, Adult S, UK terms`; null for that one. */
function editionWords(form: Form, size: string | null, terms: Pattern['terms'] | null): string | null {
  const words = [forms[form].words, size, terms === null ? null : `${terms.toUpperCase()} terms`]
  const said = words.filter((each) => each !== null)
  return said.length === 0 ? null : said.join(', ')
}

/** The overview, then the instructions and room for notes. */
function setSheet(pattern: Pattern, options: PrintOptions, composer: Composer): readonly (readonly Strip[])[] {
  const [introduction, instructions] = cutIntroduction(pattern.body)
  const overview = [
    ...setMasthead(pattern, options.studio.name, composer),
    ...setBlocks(introduction, composer),
    ...setOverview(pattern, options.page ?? null, composer, setBlocks),
  ]
  return [overview, [...setBlocks(instructions, composer), setNotes(composer)]]
}

/** What stands above the first heading introduces the pattern; without a heading all of it is instructions. */
function cutIntroduction(body: readonly Block[]): readonly [introduction: readonly Block[], rest: readonly Block[]] {
  const first = Math.max(
    0,
    body.findIndex((block) => block.type === 'heading'),
  )
  return [body.slice(0, first), body.slice(first)]
}

function drawPages(
  pen: Pen,
  sheet: Sheet,
  pages: readonly SetPage[],
  upper: number,
  area: number,
  furniture: Furniture,
): void {
  for (const [index, { placed, piece }] of pages.entries()) {
    pen.turnPage(sheet)
    for (const { strip, top, repeated } of placed) {
      const draw = (): void => strip.draw(pen, upper + top)
      if (repeated) pen.artifact('Pagination', draw)
      else draw()
      strip.fills?.(pen, upper + top, area - top)
    }
    furniture.draw(pen, index + 1, pages.length, piece)
  }
  pen.finish()
}
