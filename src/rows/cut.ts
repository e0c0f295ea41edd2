import type { Diagnostic } from '../diagnostic/index.ts'
import { interleaved } from './cut/between.ts'
import { chunksOf } from './cut/chunks.ts'
import type { Cutter, ReadRow } from './cut/row.ts'
import { namesOf } from './cut/size-names.ts'
import { startSection } from './cut/state.ts'
import { endSection, takeChunk } from './cut/take.ts'
import type { Vocabulary } from './reader.ts'
import type { Section } from './written.ts'

export type { ReadRow } from './cut/row.ts'

/** The rows of a draft in order, and its other words. */
export interface CutDraft {
  readonly rows: readonly ReadRow[]
  readonly prose: readonly string[]
  readonly diagnostics: readonly Diagnostic[]
}

function cutSection(cutter: Cutter, section: Section): void {
  const chunks = section.passages.flatMap((passage) => chunksOf(passage, cutter))
  const state = startSection(section.title ?? '', cutter.rows.length)
  for (const [index, chunk] of chunks.entries()) {
    if (!takeChunk(cutter, state, chunk, chunks.slice(index + 1))) cutter.prose.push(chunk.text)
  }
  endSection(cutter, state)
  const own = cutter.rows.splice(state.first)
  cutter.rows.push(...interleaved(own))
}

/** Finds and reads the rows. Prose is left alone: only a labelled passage, or one that reads whole as steps, is a row. */
export function cutRows(sections: readonly Section[], vocabulary: Vocabulary, sizeNames: readonly string[]): CutDraft {
  const names = namesOf(sizeNames)
  const cutter: Cutter = { vocabulary, names, rows: [], prose: [], found: [], stitch: null }
  for (const section of sections) cutSection(cutter, section)
  return { rows: cutter.rows, prose: cutter.prose, diagnostics: cutter.found }
}
