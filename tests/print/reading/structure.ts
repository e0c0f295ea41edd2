import type { PdfDictionary, PdfFile, PdfValue } from './objects.ts'

/** An element of the structure tree. */
export interface Element {
  readonly role: string
  readonly entries: PdfDictionary
  readonly parent: Element | null
  readonly children: readonly Element[]
  /** Numbers of the marked content that are its own, by page. */
  readonly content: readonly { readonly page: PdfValue; readonly id: number }[]
  /** Annotations that it holds. */
  readonly annotations: readonly PdfValue[]
}

/** Every element of the structure, each before its children. */
export function elementsOf(file: PdfFile): readonly Element[] {
  const root = file.dictionary(file.catalog['/StructTreeRoot'])
  const top = kids(file, root).map((kid) => elementOf(file, file.dictionary(kid), null))
  const all = (element: Element): readonly Element[] => [element, ...element.children.flatMap(all)]
  return top.flatMap(all)
}

function kids(file: PdfFile, entries: PdfDictionary): readonly PdfValue[] {
  const there = file.resolve(entries['/K'])
  return Array.isArray(there) ? there : there === null ? [] : [entries['/K'] ?? null]
}

function elementOf(file: PdfFile, entries: PdfDictionary, parent: Element | null): Element {
  const children: Element[] = []
  const content: { page: PdfValue; id: number }[] = []
  const annotations: PdfValue[] = []
  const element = { role: String(entries['/S']).slice(1), entries, parent, children, content, annotations }
  for (const kid of kids(file, entries)) {
    const there = file.resolve(kid)
    const inside = file.dictionary(kid)
    if (typeof there === 'number') content.push({ page: entries['/Pg'] ?? null, id: there })
    else if (inside['/Type'] === '/MCR') content.push({ page: inside['/Pg'] ?? null, id: Number(inside['/MCID']) })
    else if (inside['/Type'] === '/OBJR') annotations.push(inside['/Obj'] ?? null)
    else children.push(elementOf(file, inside, element))
  }
  return element
}
