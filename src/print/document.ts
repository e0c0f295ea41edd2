import PDFDocument from 'pdfkit'
import type { Pattern } from '../pattern/pattern.ts'
import type { Deflate } from './embed.ts'
import { join, packObjects } from './pack.ts'

/** The date in the file of a pattern that gives none: a clock would make two builds differ. */
const undated = '2000-01-01'

/**
 * A document that keeps what is written instead of streaming it: a structure is thousands of short writes,
 * and each would go through the stream's machinery on its own.
 */
class CollectedDocument extends PDFDocument {
  // Written to while PDFKit's constructor runs, so nothing may be set here after it.
  declare chunks: Uint8Array[]
  declare whole: boolean | undefined
  declare whenWhole: (() => void) | undefined

  override push(chunk: Uint8Array | null): boolean {
    this.chunks ??= []
    if (chunk === null) {
      this.whole = true
      this.whenWhole?.()
    } else this.chunks.push(chunk)
    return true
  }
}

/** An empty tagged document whose bytes depend on nothing but what is drawn on it. */
export function createDocument(pattern: Pattern, studio: string, form: string | null): CollectedDocument {
  const title = form === null ? pattern.title : `${pattern.title} – ${form}`
  const document = new CollectedDocument({
    autoFirstPage: false,
    // No default face: an unembedded one would be entered.
    font: '',
    pdfVersion: '1.7',
    tagged: true,
    lang: 'en',
    displayTitle: true,
    info: {
      Title: title,
      Author: studio,
      ...(pattern.summary === null ? {} : { Subject: pattern.summary }),
      Creator: 'sizewright',
      Producer: 'sizewright',
      CreationDate: new Date(`${pattern.published ?? undated}T00:00:00Z`),
    },
  })
  completeMetadata(document)
  return document
}

/** The file keeps to PDF/UA-1 (ISO 14289-1, 5). */
const universalAccess = `
        <rdf:Description rdf:about="" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
            <pdfuaid:part>1</pdfuaid:part>
        </rdf:Description>
        `

/**
 * The facts go into the file twice, as PDF strings and as XML. PDFKit 0.20 does not escape the second, so
 * an ampersand in a title would break it; the first have been written when this is called.
 */
function completeMetadata(document: PDFKit.PDFDocument): void {
  const write = document.endMetadata.bind(document)
  document.endMetadata = () => {
    document.appendXML(universalAccess)
    const { Title, Author, Subject } = document.info
    if (Title !== undefined) document.info.Title = escapeXml(Title)
    if (Author !== undefined) document.info.Author = escapeXml(Author)
    if (Subject !== undefined) document.info.Subject = escapeXml(Subject)
    write()
  }
}

function escapeXml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')
}

/** Ends the document and gives its bytes; PDFKit takes see-through pictures apart in its own time. */
export async function finishDocument(document: CollectedDocument, deflate: Deflate | null): Promise<Uint8Array> {
  document.end()
  if (!document.whole) {
    await new Promise<void>((resolve) => {
      document.whenWhole = resolve
    })
  }
  return join(deflate === null ? document.chunks : packObjects(document.chunks, deflate))
}
