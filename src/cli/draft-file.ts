import { readFileSync, statSync } from 'node:fs'
import { basename, dirname } from 'node:path'
import { besideDraft } from '../../plugins/read-beside.ts'
import { type ReadDraft, readDraft } from '../../plugins/read-draft.ts'
import { createSource, diagnose, type Parameters } from '../diagnostic/index.ts'
import type { Solver } from '../formula/index.ts'
import type { GivenFacts } from '../pattern/read-facts.ts'
import { solverFor } from '../solver/index.ts'

/** A draft is text; five hundred pages of it fit in this. */
const limitInMegabytes = 2

/** A file that could not be opened at all: there is nothing to report a place in. */
export interface Unopened {
  readonly name: string
  readonly problem: string
}

export type OpenedDraft =
  | { readonly kind: 'read'; readonly draft: ReadDraft }
  | { readonly kind: 'unopened'; readonly unopened: Unopened }

/**
 * Opens, reads and resolves a draft; `-` is standard input. What can't be opened comes back as a value. `given` are facts
 * for a draft that has no front matter; with sizes, its title is the file's name.
 */
export async function openDraft(name: string, given: GivenFacts = {}): Promise<OpenedDraft> {
  try {
    const path = name === '-' ? 0 : name
    if (path !== 0 && statSync(path).isDirectory())
      return unopened(name, 'is a folder; name the draft’s file inside it')
    const bytes = readFileSync(path)
    const solver = await solverFor(decode(bytes) ?? '')
    return { kind: 'read', draft: fromBytes(name, bytes, solver, given) }
  } catch (error) {
    return unopened(name, problemOf(error))
  }
}

function unopened(name: string, problem: string): OpenedDraft {
  return { kind: 'unopened', unopened: { name, problem } }
}

function problemOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined
  if (code === 'ENOENT') return 'does not exist'
  if (code === 'EACCES') return 'may not be read'
  return error instanceof Error ? `can’t be opened (${error.message})` : 'can’t be opened'
}

/** Bytes to a draft, or to a finding where they are no text that could be one. */
export function fromBytes(
  name: string,
  bytes: Uint8Array,
  solver: Solver | null = null,
  given: GivenFacts = {},
): ReadDraft {
  if (bytes.length > limitInMegabytes * 1e6) {
    const details = { megabytes: (bytes.length / 1e6).toFixed(1), limit: String(limitInMegabytes) }
    return refused(name, 'draft-too-long', details)
  }
  const text = decode(bytes)
  if (text === null) return refused(name, 'draft-not-text', {})
  if (text.trim() === '') return refused(name, 'draft-empty', {})
  const facts = given.sizes === undefined ? given : { title: name === '-' ? 'Untitled' : slugOf(name), ...given }
  return readDraft(name, slugOf(name), text, solver, name === '-' ? null : besideDraft(name), facts)
}

function decode(bytes: Uint8Array): string | null {
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
    return text.includes('\0') ? null : text
  } catch {
    return null
  }
}

function refused<C extends 'draft-too-long' | 'draft-not-text' | 'draft-empty'>(
  name: string,
  code: C,
  details: Parameters<C>,
): ReadDraft {
  const diagnostics = [diagnose(code, { start: 0, end: 0 }, details)]
  return { source: createSource(name, ''), outcome: { value: null, diagnostics }, ledger: null }
}

/** `patterns/tide-line/index.md` and `tide-line.md` are both `tide-line`. */
function slugOf(name: string): string {
  const stem = basename(name).replace(/\.[^.]+$/, '')
  return stem === 'index' ? basename(dirname(name)) : stem
}
