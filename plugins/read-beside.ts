import { readFileSync, realpathSync, statSync } from 'node:fs'
import { dirname, join, sep } from 'node:path'
import type { FileBeside, ReadBeside } from '../src/grading/index.ts'

/** Every measure of every size of a body table fits in a small part of this. */
const limitInBytes = 200_000

/** Reads files that lie in a draft's folder or below it; one that a link leads out of it is as good as missing. */
export function besideDraft(draft: string): ReadBeside {
  return (path) => {
    try {
      return readInside(realpathSync(dirname(draft)), path)
    } catch {
      return { kind: 'missing' }
    }
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
