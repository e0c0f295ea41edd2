import type { ReaderData } from '../../html/reader-data.ts'
import { askWorker } from '../ask-worker.ts'
import type { OwnPattern } from '../own/core.ts'
import type { MineJob, MineReply } from './job.ts'
import { fileWords, shown } from './shown.ts'

let worker: Worker | null = null

/**
 * Makes the print-out of the button in `line` that was pressed, and saves it; false where something could not be had, as
 * without a connection.
 */
export async function printMine(
  line: HTMLElement,
  pressed: Element,
  { slug, sizes }: ReaderData,
  ownPattern: OwnPattern | null,
): Promise<boolean> {
  const { pattern = '', parts = '', typefaces = '' } = line.dataset
  const place = (path: string): string => new URL(path, location.href).href
  const paper = pressed.closest('button')?.value === 'letter' ? 'letter' : 'a4'
  const wanted = shown()
  const name = [slug, ...fileWords(sizes), paper].join('-')
  const own = ownPattern === null ? null : await ownPattern()
  // The page shows numbers of the reader's own: the published ones would not be what was asked for.
  if (ownPattern !== null && own === null) return false
  const bytes = await make({
    places: { pattern: place(pattern), parts: place(parts), typefaces: place(typefaces) },
    own,
    ...wanted,
    paper,
  })
  if (bytes !== null) save(bytes, name)
  return bytes !== null
}

async function make(job: MineJob): Promise<MineReply> {
  worker ??= new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })
  const reply = await askWorker<MineJob, MineReply>(worker, job, null)
  if (reply === null) {
    // It may be its own program that could not be had.
    worker.terminate()
    worker = null
  }
  return reply
}

function save(bytes: Uint8Array<ArrayBuffer>, name: string): void {
  const address = URL.createObjectURL(new Blob([bytes], { type: 'application/pdf' }))
  Object.assign(document.createElement('a'), { href: address, download: `${name}.pdf` }).click()
  // The browser may take its time to fetch it.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
