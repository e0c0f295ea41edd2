import { parseArgs } from 'node:util'
import type { ReadDraft } from '../../plugins/read-draft.ts'
import type { Diagnostic } from '../diagnostic/index.ts'
import type { GivenFacts } from '../pattern/read-facts.ts'
import { proofDocument } from '../proof/document.ts'
import { proofFile } from '../proof/page/index.ts'
import { rowsCsv } from '../proof/rows-csv.ts'
import type { Proofed } from '../proof/text.ts'
import { proofText } from '../proof/text.ts'
import { type OpenedDraft, openDraft } from './draft-file.ts'
import { paintFor } from './paint.ts'
import { watchDrafts } from './watch.ts'

interface Asked {
  readonly names: readonly string[]
  readonly as: 'text' | 'json' | 'html' | 'csv'
  readonly watch: boolean
  /** Said on the command line, for drafts without front matter. */
  readonly given: Pick<GivenFacts, 'sizes' | 'terms'>
}

const options = {
  json: { type: 'boolean', default: false },
  html: { type: 'boolean', default: false },
  csv: { type: 'boolean', default: false },
  watch: { type: 'boolean', default: false },
  sizes: { type: 'string' },
  terms: { type: 'string' },
} as const

function asked(args: readonly string[]): Asked | string {
  const { tokens } = parseArgs({ args: [...args], options, allowPositionals: true, strict: false, tokens: true })
  const strange = tokens.find((token) => token.kind === 'option' && !(token.name in options))
  if (strange?.kind === 'option') return `There is no option “${strange.rawName}”.`
  try {
    const { values, positionals: names } = parseArgs({ args: [...args], options, allowPositionals: true })
    const { watch, terms } = values
    const wanted = (['json', 'html', 'csv'] as const).filter((kind) => values[kind])
    const as = wanted[0] ?? 'text'
    if (wanted.length > 1) return 'Ask for one of --json, --html and --csv at a time.'
    if (names.length === 0) return 'Name a draft to proof.'
    if ((as === 'html' || as === 'csv') && names.length > 1) return `--${as} is for one draft at a time.`
    if (watch && (as !== 'text' || names.includes('-')))
      return '--watch shows files as they are saved: in the terminal only, and no standard input.'
    if (terms !== undefined && terms !== 'us' && terms !== 'uk') return '--terms is us or uk.'
    const sizes = values.sizes?.split(',').map((size) => size.trim())
    if (sizes?.some((size) => size === '')) return '--sizes is a list of names: --sizes "S, M, L".'
    if (new Set(sizes).size < (sizes?.length ?? 0)) return '--sizes names a size twice.'
    return { names, as, watch, given: { ...(sizes && { sizes }), ...(terms && { terms }) } }
  } catch {
    return '--sizes and --terms need a value: --sizes "S, M, L" --terms uk.'
  }
}

/** `sizewright proof DRAFT… [--json | --html | --csv] [--watch] [--sizes LIST] [--terms us|uk]` */
export async function proof(args: readonly string[]): Promise<0 | 1 | 2> {
  const request = asked(args)
  if (typeof request === 'string') {
    process.stderr.write(`${request}\n`)
    return 2
  }
  const drafts = await opened(request.names, request)
  tellUnopened(drafts)
  process.stdout.write(printed[request.as](drafts))
  if (!request.watch) return statusOf(drafts)
  await watchDrafts(request.names, (names) => showAgain(names, request))
  return 0
}

async function opened(names: readonly string[], { given }: Asked): Promise<readonly OpenedDraft[]> {
  const drafts: OpenedDraft[] = []
  for (const name of names) drafts.push(await openDraft(name, given))
  return drafts
}

function tellUnopened(drafts: readonly OpenedDraft[]): void {
  for (const draft of drafts) {
    if (draft.kind === 'unopened') process.stderr.write(`${draft.unopened.name}: ${draft.unopened.problem}.\n`)
  }
}

const clearScreen = '\u001b[2J\u001b[3J\u001b[H'

/** Drafts that were saved while they are watched. */
async function showAgain(names: readonly string[], request: Asked): Promise<void> {
  const drafts = await opened(names, request)
  if (process.stdout.isTTY) process.stdout.write(clearScreen)
  tellUnopened(drafts)
  process.stdout.write(asText(drafts))
}

function documentOf({ source, outcome }: ReadDraft) {
  return proofDocument(source, outcome.value, outcome.diagnostics)
}

/** One document for one draft, an array in the order given for several. */
function asJson(drafts: readonly OpenedDraft[]): string {
  const proofs = drafts.flatMap((opened) => (opened.kind === 'unopened' ? [] : [documentOf(opened.draft)]))
  if (proofs.length === 0) return ''
  return `${JSON.stringify(drafts.length === 1 ? proofs[0] : proofs, null, 1)}\n`
}

function proofedOf(drafts: readonly OpenedDraft[]): readonly Proofed[] {
  return drafts.flatMap((opened) => {
    if (opened.kind === 'unopened') return []
    const { source, outcome, ledger } = opened.draft
    return [{ source, pattern: outcome.value, diagnostics: outcome.diagnostics, unknown: ledger?.unknown ?? [] }]
  })
}

function asText(drafts: readonly OpenedDraft[]): string {
  const paint = paintFor(process.stdout)
  return proofedOf(drafts)
    .map((proofed) => proofText(proofed, { paint }))
    .join('\n')
}

const printed: Readonly<Record<Asked['as'], (drafts: readonly OpenedDraft[]) => string>> = {
  text: asText,
  json: asJson,
  html: (drafts) => proofedOf(drafts).map(proofFile).join(''),
  csv: (drafts) => proofedOf(drafts).map(rowsCsv).join(''),
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
