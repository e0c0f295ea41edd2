import type { Deflate, Embedded } from './embed.ts'
import { embedFace } from './embed.ts'
import type { Spoken } from './expansion.ts'
import type { Face } from './face.ts'
import type { Fragment } from './line.ts'
import * as operators from './operators.ts'
import type { Shape } from './shape.ts'
import { shapeText } from './shape.ts'
import type { Tag } from './tag.ts'

/** Every sheet of a print-out has one size, in points. */
export interface Sheet {
  readonly width: number
  readonly height: number
}

/** A box on a page, by its upper left corner. */
export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/**
 * Draws on the pages of one document and keeps its structure: what is drawn lies in the marked content of
 * its tag, neighbours with one tag share it, and all else is an artifact. Places count in points from the
 * top left corner of the page.
 */
export class Pen {
  readonly #doc: PDFKit.PDFDocument
  readonly #spoken: Spoken
  readonly #deflate: Deflate | null
  readonly #elements = new Map<Tag, PDFKit.PDFStructureElement>()
  readonly #faces = new Map<Face, Embedded>()
  readonly #bookmarks: { readonly depth: number; readonly item: PDFKit.PDFOutline }[]
  #open: Tag | null = null
  #asArtifact = false
  /** Content that PDFKit has not been given yet: many small calls cost more than the drawing. */
  #content = ''
  #font = ''
  #colour = ''

  constructor(doc: PDFKit.PDFDocument, spoken: Spoken, deflate: Deflate | null) {
    this.#doc = doc
    this.#deflate = deflate
    this.#spoken = spoken
    this.#bookmarks = [{ depth: 0, item: doc.outline }]
  }

  turnPage(sheet: Sheet): void {
    this.#close()
    this.#flush()
    this.#doc.addPage({ size: [sheet.width, sheet.height], margin: 0 })
    this.#font = ''
    this.#colour = ''
  }

  /** Draws something that is no part of the text: rules, boxes, what stands at the head and foot of a page. */
  artifact(type: 'Layout' | 'Pagination', draw: () => void): void {
    if (this.#asArtifact) {
      draw()
      return
    }
    this.#close()
    this.#content += `/Artifact <</Type /${type}>> BDC\n`
    this.#asArtifact = true
    draw()
    this.#asArtifact = false
    this.#content += 'EMC\n'
  }

  /** Puts tags into the structure before they are drawn, where the order of reading is not that of drawing. */
  announce(tags: readonly Tag[]): void {
    for (const tag of tags) this.#elementOf(tag)
  }

  /** Writes a line from its left end; a linked stretch becomes a link of its own. */
  write(fragments: readonly Fragment[], tag: Tag, x: number, baseline: number): void {
    for (const [index, fragment] of fragments.entries()) {
      if (fragment.style.href !== null && !this.#asArtifact) this.#link(fragment, fragment.style.href, tag, x, baseline)
      else this.#within(tag, () => this.#stretch(fragments, index, tag, x, baseline))
    }
  }

  /** A fragment; with the first of a fraction begins what is read in its place, and ends with the last. */
  #stretch(fragments: readonly Fragment[], index: number, tag: Tag, x: number, baseline: number): void {
    const fragment = fragments[index]
    if (fragment === undefined) return
    const spoken = tag.asWritten || this.#asArtifact ? asWritten : this.#spoken
    if (fragment.reads) this.#content += operators.beginSpan('ActualText', fractionFrom(fragments, index))
    this.#letters(fragment, x, baseline, spoken)
    const goesOn = fragments[index + 1]?.reads === ''
    if (fragment.reads !== null && !goesOn) this.#content += operators.endSpan
  }

  rule(x1: number, y1: number, x2: number, y2: number, colour: string, thickness: number): void {
    this.artifact('Layout', () => {
      this.#content += operators.stroke(thickness, colour) + operators.line(x1, y1, x2, y2)
    })
  }

  /** The outline of an empty box to tick, by the upper left corners of the boxes. */
  boxes(
    corners: readonly (readonly [x: number, y: number])[],
    outline: string,
    colour: string,
    thickness: number,
  ): void {
    if (corners.length === 0) return
    this.artifact('Layout', () => {
      this.#content += operators.stroke(thickness, colour) + operators.repeated(outline, corners)
    })
  }

  picture(image: PDFKit.Mixins.OpenedImage, tag: Tag, x: number, y: number, width: number, height: number): void {
    const bbox: [number, number, number, number] = [x, y, x + width, y + height]
    this.#elementOf(tag, { bbox, placement: 'Block' })
    this.#within(tag, () => {
      this.#flush()
      this.#doc.image(image, x, y, { fit: [width, height] })
    })
  }

  /** Draws lines, given as operators in points of their own, so much enlarged, in a box on the page; without a tag for the eye only. */
  drawing(lines: string, scale: number, tag: Tag | null, { x, y, width, height }: Box): void {
    const draw = (): void => {
      const [size, left, top] = [scale, x, y].map(operators.number)
      this.#content += `q ${size} 0 0 ${size} ${left} ${top} cm\n${lines}Q\n`
    }
    if (tag === null) {
      this.artifact('Layout', draw)
      return
    }
    this.#elementOf(tag, { bbox: [x, y, x + width, y + height], placement: 'Block' })
    this.#within(tag, draw)
  }

  /** Adds an entry to the document's outline, under the last one of a lesser depth. */
  bookmark(title: string, depth: number, top: number): void {
    while ((this.#bookmarks.at(-1)?.depth ?? -1) >= depth) this.#bookmarks.pop()
    const parent = this.#bookmarks.at(-1)?.item ?? this.#doc.outline
    this.#bookmarks.push({ depth, item: parent.addItem(title, { expanded: depth < 2, top }) })
  }

  /** Closes what is open; the last call. */
  finish(): void {
    this.#close()
    this.#flush()
    for (const face of this.#faces.values()) face.end()
  }

  #within(tag: Tag, draw: () => void): void {
    if (!this.#asArtifact && this.#open !== tag) {
      this.#close()
      const element = this.#elementOf(tag)
      this.#flush()
      element.add(this.#doc.markStructureContent(tag.role))
      this.#open = tag
    }
    draw()
  }

  #close(): void {
    if (this.#open === null) return
    this.#flush()
    this.#doc.endMarkedContent()
    this.#open = null
  }

  #elementOf(tag: Tag, more: PDFKit.Mixins.StructureElementOptions = {}): PDFKit.PDFStructureElement {
    const known = this.#elements.get(tag)
    if (known !== undefined) return known
    const { role, parent, alt, scope, numbering } = tag
    const element = this.#doc.struct(role, {
      ...more,
      ...(alt === undefined ? {} : { alt }),
      ...(scope === undefined ? {} : { scope }),
    })
    if (numbering !== undefined) Object.assign(element.dictionary.data, { A: { O: 'List', ListNumbering: numbering } })
    if (parent === null) this.#doc.addStructure(element)
    else this.#elementOf(parent).add(element)
    this.#elements.set(tag, element)
    return element
  }

  #letters(fragment: Fragment, x: number, baseline: number, spoken: Spoken): void {
    const { face, style, size } = fragment
    const shapes = shapeText(face, fragment.text, style.tabular)
    const left = x + fragment.x
    this.#choose(face, size, style.colour, shapes)
    this.#content += operators.words(shapes, size, left, baseline - fragment.rise, spoken)
    if (style.strike) this.#underline(fragment, left, baseline - size * 0.3)
  }

  /** Sets font and colour where they are not those of the letters before. */
  #choose(face: Face, size: number, colour: string, shapes: readonly Shape[]): void {
    const { name, reference, shown } = this.#embedded(face)
    for (const shape of shapes) shown.add(shape)
    const font = `/${name} ${operators.number(size)} Tf\n`
    if (this.#font !== font) {
      this.#doc.page.fonts[name] = reference
      this.#content += font
      this.#font = font
    }
    if (this.#colour !== colour) this.#content += `${operators.rgb(colour)} rg\n`
    this.#colour = colour
  }

  #embedded(face: Face): Embedded {
    const known = this.#faces.get(face)
    if (known !== undefined) return known
    const embedded = embedFace(this.#doc, face, this.#faces.size, this.#deflate)
    this.#faces.set(face, embedded)
    return embedded
  }

  #underline(fragment: Fragment, x: number, y: number): void {
    this.#content += operators.stroke(0.5, fragment.style.colour) + operators.line(x, y, x + fragment.width, y)
  }

  #flush(): void {
    if (this.#content !== '') this.#doc.addContent(this.#content)
    this.#content = ''
  }

  #link(fragment: Fragment, href: string, parent: Tag, x: number, baseline: number): void {
    const tag: Tag = { role: 'Link', parent }
    this.#elementOf(parent)
    this.#within(tag, () => {
      this.#letters(fragment, x, baseline, asWritten)
      this.#underline(fragment, x + fragment.x, baseline + 1.6)
    })
    const { size, width } = fragment
    const element = this.#elementOf(tag)
    this.#doc.link(x + fragment.x, baseline - size, width, size * 1.3, href, {
      structParent: element,
      // PDFKit writes a plain string here as a PDF name; an object of strings is written as text.
      Contents: Object(href),
    })
    this.#close()
    // The annotation is noted with the page that is current when the element ends.
    element.end()
  }
}

const asWritten: Spoken = () => null

/** The fraction that begins with a fragment, and the space after it. */
function fractionFrom(fragments: readonly Fragment[], index: number): string {
  let last = index
  while (fragments[last + 1]?.reads === '') last += 1
  return `${fragments[index]?.reads ?? ''}${fragments[last]?.text.endsWith(' ') ? ' ' : ''}`
}
