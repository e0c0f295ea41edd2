import { readFileSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import { pictureAt } from '../../plugins/read-beside.ts'
import type { Pattern } from '../pattern/pattern.ts'

/** The cover as its file has it, from beside the draft; null where there is none that could be shown. */
export function coverFile({ cover }: Pattern, draft: string | undefined): Uint8Array | null {
  if (cover === null || draft === undefined) return null
  const path = resolve(dirname(draft), cover.src)
  return pictureAt(path) === 'picture' ? readFileSync(path) : null
}
