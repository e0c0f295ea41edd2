import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { inflateSync } from 'node:zlib'
import type { Fonts } from './face.ts'
import { typefacePath, typefaces } from './typefaces.ts'
import { unwrapWoff } from './woff.ts'

let named: Fonts | undefined

/** The project's typefaces, read from the installed packages once, each file when a letter of it is first asked for. */
export function loadFonts(): Fonts {
  named ??= typefaces((name) => () => unwrapWoff(readTypeface(name), inflateSync))
  return named
}

/** A file of the project's typefaces as it is installed, in WOFF 1.0. */
export function readTypeface(name: string): Uint8Array {
  return readFileSync(fileURLToPath(import.meta.resolve(typefacePath(name))))
}
