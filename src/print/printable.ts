import { charactersOf } from './cmap.ts'
import type { FontFile } from './face.ts'
import { loadFonts } from './fonts.ts'
import { isPrinted } from './substitute.ts'
import { readTables } from './truetype.ts'

/** What the text face is known to have, so that most drafts open no file. */
const certain = /[\x20-\x7e\u00a0-\u017e\u2013\u2014\u2018-\u201a\u201c-\u201e\u2026]/

/** Whether a print-out in the project's typefaces shows a character, in one way or another. */
export function prints(character: string): boolean {
  if (certain.test(character)) return true
  return isPrinted(character, (other) => loadFonts().text.some((file) => has(file, other)))
}

const known = new Map<FontFile, ReadonlySet<number>>()

function has(file: FontFile, character: string): boolean {
  const characters = known.get(file) ?? charactersOf(tableOf(file))
  known.set(file, characters)
  return characters.has(character.codePointAt(0) ?? 0)
}

function tableOf(file: FontFile): Uint8Array {
  const cmap = readTables(typeof file === 'function' ? file() : file).get('cmap')
  if (cmap === undefined) throw new Error('a font file does not say which characters it has')
  return cmap
}
