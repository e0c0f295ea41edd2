import { readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { besideDraft } from '../plugins/read-beside.ts'
import { type ReadDraft, readDraft } from '../plugins/read-draft.ts'
import { loadSolver } from '../src/solver/index.ts'

const folder = resolve(import.meta.dirname, '../content/patterns')
const solver = await loadSolver()

/** The drafts that come with the program, by slug, in the order of the alphabet. */
export const demoDrafts: readonly (readonly [slug: string, text: string])[] = readdirSync(folder)
  .toSorted()
  .map((slug) => [slug, readFileSync(join(folder, slug, 'index.md'), 'utf8')])

export function demoText(slug: string): string {
  const text = demoDrafts.find(([name]) => name === slug)?.[1]
  if (text === undefined) throw new Error(`there is no draft ${slug}`)
  return text
}

/** Reads a demo draft, or an edited one in its place: with its folder, and with linked counts. */
export function readDemo(slug: string, text: string): ReadDraft {
  return readDraft('index.md', slug, text, solver, besideDraft(join(folder, slug, 'index.md')))
}
