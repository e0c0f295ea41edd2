import type { PDFDocumentProxy, PDFPageProxy } from 'pdfjs-dist'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** Text as a reader's program finds it: its left end and baseline in points from the lower left corner. */
export interface FoundText {
  readonly text: string
  readonly x: number
  readonly y: number
  readonly width: number
}

export interface FoundPage {
  readonly width: number
  readonly height: number
  readonly found: readonly FoundText[]
  /** All text of the page in the order in which it is drawn. */
  readonly text: string
  /** The roles of the page's part of the structure, one a line, children indented. */
  readonly structure: readonly string[]
  /** The page's part of the structure with its text: what is read out, without heads, feet and boxes. */
  readonly tree: TextNode
  readonly links: readonly string[]
}

/** An element of the structure, with the text of its own and of its children in the order of reading. */
export interface TextNode {
  readonly role: string
  readonly text: string
  readonly children: readonly TextNode[]
}

export interface FoundDocument {
  readonly pages: readonly FoundPage[]
  readonly text: string
  readonly title: unknown
  readonly xmpTitle: unknown
  readonly language: unknown
  readonly outline: readonly string[]
}

/** Reads a PDF with a program that shares nothing with the one that wrote it. */
export async function readPdf(bytes: Uint8Array): Promise<FoundDocument> {
  const task = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 })
  const document = await task.promise
  const pages: FoundPage[] = []
  for (let number = 1; number <= document.numPages; number++) pages.push(await readPage(await document.getPage(number)))
  const { info, metadata } = await document.getMetadata()
  const facts: Record<string, unknown> = { ...info }
  const outline = await readOutline(document)
  await task.destroy()
  return {
    pages,
    text: pages.map((page) => page.text).join(' '),
    title: facts.Title,
    xmpTitle: metadata?.get('dc:title'),
    language: facts.Language,
    outline,
  }
}

async function readPage(page: PDFPageProxy): Promise<FoundPage> {
  const { width, height } = page.getViewport({ scale: 1 })
  const { items } = await page.getTextContent()
  const found = items.flatMap((item) => {
    if (!('str' in item) || item.str.trim() === '') return []
    const [, , , , x = 0, y = 0]: number[] = item.transform
    return [{ text: item.str, x, y, width: item.width }]
  })
  const text = items.map((item) => ('str' in item ? `${item.str}${item.hasEOL ? ' ' : ''}` : '')).join('')
  const annotations: { url?: string }[] = await page.getAnnotations()
  const whole = await page.getStructTree()
  const structure = roles(whole, 0)
  const tree = textTree(whole, await markedText(page))
  return { width, height, found, text, structure, tree, links: annotations.flatMap(({ url }) => url ?? []) }
}

/** Text of each marked content, by its name in the structure. */
async function markedText(page: PDFPageProxy): Promise<ReadonlyMap<string, string>> {
  const { items } = await page.getTextContent({ includeMarkedContent: true })
  const texts = new Map<string, string>()
  const open: (string | null)[] = []
  for (const item of items) {
    if ('str' in item) {
      const id = open.findLast((name) => name !== null)
      if (id !== undefined && id !== null) texts.set(id, `${texts.get(id) ?? ''}${item.str}${item.hasEOL ? ' ' : ''}`)
    } else if (item.type === 'endMarkedContent') open.pop()
    else open.push(item.id ?? null)
  }
  return texts
}

function textTree(node: Structure | Structure['children'][number], texts: ReadonlyMap<string, string>): TextNode {
  if (!('role' in node)) {
    const text = 'id' in node && typeof node.id === 'string' ? (texts.get(node.id) ?? '') : ''
    return { role: '', text, children: [] }
  }
  const children = node.children.map((child) => textTree(child, texts))
  return {
    role: node.role,
    text: children.map((child) => child.text).join(' '),
    children: children.filter((child) => child.role !== ''),
  }
}

type Structure = Awaited<ReturnType<PDFPageProxy['getStructTree']>>

function roles(node: Structure | Structure['children'][number], depth: number): readonly string[] {
  if (!('role' in node)) return []
  const alt = 'alt' in node && typeof node.alt === 'string' ? ` "${node.alt}"` : ''
  const scope = 'scope' in node && node.scope !== undefined ? ` of its ${node.scope}` : ''
  return [
    `${'  '.repeat(depth)}${node.role}${scope}${alt}`,
    ...node.children.flatMap((child) => roles(child, depth + 1)),
  ]
}

interface OutlineEntry {
  readonly title: string
  readonly items: readonly OutlineEntry[]
}

async function readOutline(document: PDFDocumentProxy): Promise<readonly string[]> {
  const entries: readonly OutlineEntry[] = (await document.getOutline()) ?? []
  const lines = (entry: OutlineEntry, depth: number): readonly string[] => [
    `${'  '.repeat(depth)}${entry.title}`,
    ...entry.items.flatMap((item) => lines(item, depth + 1)),
  ]
  return entries.flatMap((entry) => lines(entry, 0))
}

/** Text without the accidents of setting: no spaces, fractions as they are built from small figures. */
export function bare(text: string): string {
  const built: Readonly<Record<string, string>> = {
    '⅛': '1⁄8',
    '⅜': '3⁄8',
    '⅝': '5⁄8',
    '⅞': '7⁄8',
    '⅓': '1⁄3',
    '⅔': '2⁄3',
  }
  return text.replace(/[⅛⅜⅝⅞⅓⅔]/g, (fraction) => built[fraction] ?? fraction).replace(/\s+/g, '')
}
