import type { ReadDraft } from '../../plugins/read-draft.ts'
import type { Diagnostic } from '../diagnostic/index.ts'
import { proofDocument } from '../proof/document.ts'
import { proofText } from '../proof/text.ts'
import { type OpenedDraft, openDraft } from './draft-file.ts'
import { paintFor } from './paint.ts'

/** `sizewright proof DRAFT… [--json]` */
export async function proof(args: readonly string[]): Promise<0 | 1 | 2> {
  const json = args.includes('--json')
  const unknown = args.find((arg) => arg.startsWith('-') && arg !== '-' && arg !== '--json')
  const names = args.filter((arg) => arg === '-' || !arg.startsWith('-'))
  if (unknown !== undefined || names.length === 0) {
    process.stderr.write(unknown === undefined ? 'Name a draft to proof.\n' : `There is no option “${unknown}”.\n`)
    return 2
  }
  const drafts: OpenedDraft[] = []
  for (const name of names) drafts.push(await openDraft(name))
  for (const draft of drafts) {
    if (draft.kind === 'unopened') process.stderr.write(`${draft.unopened.name}: ${draft.unopened.problem}.\n`)
  }
  process.stdout.write(json ? asJson(drafts) : asText(drafts))
  return statusOf(drafts)
}

function documents(drafts: readonly OpenedDraft[]) {
  return drafts.flatMap((opened) => (opened.kind === 'unopened' ? [] : [documentOf(opened.draft)]))
}

function documentOf({ source, outcome }: ReadDraft) {
  return proofDocument(source, outcome.value, outcome.diagnostics)
}

/** One document for one draft, an array in the order given for several. */
function asJson(drafts: readonly OpenedDraft[]): string {
  const proofs = documents(drafts)
  if (proofs.length === 0) return ''
  return `${JSON.stringify(drafts.length === 1 ? proofs[0] : proofs, null, 1)}\n`
}

function asText(drafts: readonly OpenedDraft[]): string {
  const paint = paintFor(process.stdout)
  return drafts
    .flatMap((opened) => {
      if (opened.kind === 'unopened') return []
      const { source, outcome, ledger } = opened.draft
      const { value: pattern, diagnostics } = outcome
      return [proofText({ source, pattern, diagnostics, unknown: ledger?.unknown ?? [] }, { paint })]
    })
    .join('\n')
}

function statusOf(drafts: readonly OpenedDraft[]): 0 | 1 | 2 {
  const read = drafts.flatMap((opened) => (opened.kind === 'read' ? [opened.draft.outcome.diagnostics] : []))
  if (read.length < drafts.length || read.some(isUnreadable)) return 2
  return read.flat().some((diagnostic) => diagnostic.severity === 'error') ? 1 : 0
}

/** A file that is no text could not be read as a draft at all. */
function isUnreadable(diagnostics: readonly Diagnostic[]): boolean {
  return diagnostics.some((diagnostic) => diagnostic.code === 'draft-not-text')
}
