import type { ReaderData } from '../html/reader-data.ts'

/** What the page brings for its script; null on a page that brings nothing. */
export function readData(): ReaderData | null {
  const text = document.getElementById('reader-data')?.textContent ?? 'null'
  const data: unknown = JSON.parse(text)
  return isReaderData(data) ? data : null
}

/** The page and its script come from one build, so a look at one part tells. */
function isReaderData(data: unknown): data is ReaderData {
  return typeof data === 'object' && data !== null && 'slug' in data
}
