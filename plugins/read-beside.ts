import { readFileSync, realpathSync, statSync } from 'node:fs'
import { dirname, join, resolve, sep } from 'node:path'
import type { FileBeside, ReadBeside } from '../src/grading/index.ts'
import type { LookBeside, PictureBeside } from '../src/pattern/checks/pictures.ts'

/** What a draft may have from its folder. */
export interface Beside {
  readonly readBeside: ReadBeside
  readonly lookBeside: LookBeside
}

/** Every measure of every size of a body table fits in a small part of this. */
const limitInBytes = 200_000

/** Reads files that lie in a draft's folder or below it; one that a link leads out of it is as good as missing. */
function reader(draft: string): ReadBeside {
  return (path) => {
    try {
      return readInside(realpathSync(dirname(draft)), path)
    } catch {
      return { kind: 'missing' }
    }
  }
}

/** What lies in a draft's folder. Pictures, which no text is read from, may be shared from elsewhere. */
export function besideDraft(draft: string): Beside {
  return { readBeside: reader(draft), lookBeside: (path) => pictureAt(resolve(dirname(draft), path)) }
}

/** First letters of the kinds of pictures that a page can show: PNG, JPEG, GIF, WebP, AVIF and its kin, TIFF. */
const openings = /^(?:\u0089PNG|\u00ff\u00d8\u00ff|GIF8|RIFF.{4}WEBP|.{4}ftyp|II\*\0|MM\0\*)/s

/** Whether there is a picture at a path, as its first letters tell. */
export function pictureAt(path: string): PictureBeside {
  try {
    const bytes = readFileSync(path)
    return openings.test(bytes.toString('latin1', 0, 16)) || bytes.toString('latin1', 0, 65_536).includes('<svg')
      ? 'picture'
      : 'other'
  } catch {
    return 'missing'
  }
}

function readInside(folder: string, path: string): FileBeside {
  const file = realpathSync(join(folder, path))
  if (!file.startsWith(folder.endsWith(sep) ? folder : folder + sep)) return { kind: 'missing' }
  const entry = statSync(file)
  if (!entry.isFile()) return { kind: 'missing' }
  return entry.size > limitInBytes ? { kind: 'too-long' } : decoded(readFileSync(file))
}

function decoded(bytes: Uint8Array): FileBeside {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    return text.includes('\0') ? { kind: 'not-text' } : { kind: 'text', text }
  } catch {
    return { kind: 'not-text' }
  }
}
