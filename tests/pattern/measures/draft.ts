import { readDraft } from '../../../plugins/read-draft.ts'
import type { Diagnostic } from '../../../src/diagnostic/index.ts'
import type { Measure } from '../../../src/pattern/pattern.ts'
import { loadSolver } from '../../../src/solver/index.ts'

const solver = await loadSolver()

export interface Draft {
  /** Lines of the front matter beside title, sizes and swatch. */
  readonly facts?: string
  /** `title: Mat` where it is left out. */
  readonly title?: string
  /** `[S, M, L]` where they are left out. */
  readonly sizes?: string
  /** 12 stitches and 8 rows in 10 cm where it is left out. */
  readonly swatch?: string
  /** Lines of a grading block. */
  readonly grading?: string
  readonly body?: string
}

export interface Proofed {
  readonly text: string
  readonly measures: readonly Measure[]
  readonly findings: readonly Diagnostic[]
}

/** A draft read and worked. */
export function proofed(draft: Draft): Proofed {
  const { facts = '', title = 'Mat', sizes = '[S, M, L]', grading = '', body = '' } = draft
  const { swatch = 'swatch: {stitches: 12 per 10 cm, rows: 8 per 10 cm}' } = draft
  const head = [`title: ${title}`, `sizes: ${sizes}`, swatch, facts].filter((line) => line !== '').join('\n')
  const block = grading === '' ? '' : `\`\`\`grading\n${grading}\n\`\`\`\n\n`
  const text = `---\n${head}\n---\n\n${block}${body}\n`
  const { value, diagnostics } = readDraft('mat.md', 'mat', text, solver).outcome
  return { text, measures: value?.measures ?? [], findings: diagnostics }
}

/** Codes of what is found, with the positions of the sizes: `measure-off-target 0,2`. */
export function codesOf({ findings }: Proofed): readonly string[] {
  return findings.map(({ code, sizes }) => `${code} ${sizes.join()}`.trim())
}

/** The sentence of a kind of finding. */
export function sentenceOf({ findings }: Proofed, code: string): string | null {
  return findings.find((each) => each.code === code)?.message ?? null
}
