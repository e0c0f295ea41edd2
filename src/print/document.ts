import PDFDocument from 'pdfkit'
import type { Pattern } from '../pattern/pattern.ts'

/** The date in the file of a pattern that gives none: a clock would make two builds differ. */
const undated = '2000-01-01'

/** An empty tagged document whose bytes depend on nothing but what is drawn on it. */
export function createDocument(pattern: Pattern, studio: string): PDFKit.PDFDocument {
  const title = pattern.title
  const document = new PDFDocument({
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
  escapeMetadata(document)
  return document
}

/**
 * The facts go into the file twice, as PDF strings and as XML. PDFKit 0.20 does not escape the second, so
 * an ampersand in a title would break it; the first have been written when this is called.
 */
function escapeMetadata(document: PDFKit.PDFDocument): void {
  const write = document.endMetadata.bind(document)
  document.endMetadata = () => {
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

/** Ends the document and gives its bytes. */
export function finishDocument(document: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = []
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk))
    document.on('end', () => resolve(join(chunks)))
    document.on('error', reject)
    document.end()
  })
}

function join(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0))
  let offset = 0
  for (const chunk of chunks) {
    bytes.set(chunk, offset)
    offset += chunk.length
  }
  return bytes
}
