import { resolve } from 'node:path'

/** The address at which the preview server opens the editor at a place of a draft; `filePath` counts from the project. */
export function editorAddress(filePath: string, line: number, column = 1): string {
  return `/__open-in-editor?file=${encodeURIComponent(`${resolve(filePath)}:${line}:${column}`)}`
}
