import GithubSlugger from 'github-slugger'
import type { Root } from 'mdast'
import type { Diagnostic, Outcome, Source } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { Solver } from '../formula/index.ts'
import type { ReadBeside } from '../grading/index.ts'
import { withAccepted } from './accepted.ts'
import { checkFacts } from './check-facts.ts'
import { abbreviationFindings } from './checks/abbreviations.ts'
import { characterFindings, type Prints } from './checks/characters.ts'
import { completenessFindings } from './checks/complete.ts'
import { materialFindings } from './checks/materials.ts'
import { type LookBeside, pictureFindings } from './checks/pictures.ts'
import { textListFindings } from './checks/text-lists.ts'

import { bodyNodes, type Draft, spanOf, textAt, walk } from './draft.ts'
import { drawFigure } from './figures.ts'
import { findFrontMatter } from './front-matter.ts'
import { isOnlySizes, isUnclosed, sizesOf } from './only.ts'
import type { Pattern } from './pattern.ts'
import type { GivenFacts } from './read-facts.ts'
import { givenFacts, readFacts } from './read-facts.ts'
import { type Worked, workPattern } from './work.ts'

export type { WorkedDraft } from './work.ts'

/** A draft to be resolved. Its Markdown is parsed only when the front matter can be used. */
export interface DraftText {
  readonly source: Source
  /** Short name of the pattern, for addresses. */
  readonly slug: string
  /** Chooses linked counts; only a draft that has some needs it. */
  readonly solver?: Solver | null
  /** Reads a file of the draft's folder; only a draft with a body table of its own needs it. */
  readonly readBeside?: ReadBeside | null
  /** Looks whether a picture lies in the draft's folder; without it, pictures are taken to be there. */
  readonly lookBeside?: LookBeside | null
  /** Whether the print-out's typefaces have a character; without it, none is missed. */
  readonly prints?: Prints | null
  /** Facts for a draft that lacks them: an old one, typed without front matter. */
  readonly given?: GivenFacts
  /**
   * The Markdown tree of the body, which starts at the offset given, and what must be added to the tree's offsets to
   * get offsets into the file.
   */
  readonly parse: (bodyStart: number) => { readonly tree: Root; readonly shift: number }
}

/**
 * From a draft to its pattern: facts, grading, placeholders, rows, text. The pattern is null only when
 * the front matter can't be used; any other error leaves its place marked and the rest whole.
 */
export function resolveDraft(draft: DraftText): Outcome<Pattern | null> {
  const { value, diagnostics } = workDraft(draft)
  return { value: value?.pattern ?? null, diagnostics }
}

/** As `resolveDraft`, with all that the pattern was made from. */
export function workDraft(text: DraftText): Outcome<Worked | null> {
  const { source, slug, parse, solver = null, readBeside = null, lookBeside = null, prints = null } = text
  const { value: read, diagnostics } = factsOf(text)
  if (read === null) return { value: null, diagnostics }
  const { facts, bodyStart } = read
  const draft: Draft = { slug, source, facts, ...parse(bodyStart), bodyStart }
  const findings: Diagnostic[] = [
    ...textFindings(draft),
    ...pictureFindings(draft, lookBeside),
    ...characterFindings(draft, prints),
  ]
  const value = workPattern(draft, { solver, readBeside, draw: drawFigure, anchors: anchorsOfPage }, findings)
  const { ledger, graded } = value
  findings.push(
    ...checkFacts(draft, graded),
    ...abbreviationFindings(draft, ledger),
    ...completenessFindings(draft),
    ...textListFindings(draft, ledger),
    ...materialFindings(draft, graded.environment, ledger),
  )
  return { value, diagnostics: inOrder(withAccepted(draft, ledger, findings)) }
}

function anchorsOfPage(): (words: string) => string {
  const slugger = new GithubSlugger()
  return (words) => slugger.slug(words)
}

/** The facts at the top of a draft, and where its body starts; those given where it has none. */
function factsOf({ source, given = {} }: DraftText): Outcome<Pick<Draft, 'facts' | 'bodyStart'> | null> {
  const fences = findFrontMatter(source)
  if (fences.value !== null) {
    const { value, diagnostics } = readFacts(source, fences.value, given)
    return { value: value === null ? null : { facts: value, bodyStart: fences.value.bodyStart }, diagnostics }
  }
  const missing = fences.diagnostics.every(({ code }) => code === 'front-matter-missing')
  const facts = missing ? givenFacts(given) : null
  return facts === null
    ? { value: null, diagnostics: fences.diagnostics }
    : { value: { facts, bodyStart: 0 }, diagnostics: [] }
}
/** What is wrong with the text itself: things left open, passages for sizes that there are not. */
function* textFindings(draft: Draft): Generator<Diagnostic> {
  for (const node of walk(bodyNodes(draft))) {
    const at = spanOf(draft, node)
    if (node.type === 'text') yield* unclosed(draft, at)
    if (!isOnlySizes(node)) continue
    yield* sizesOf(draft, node).diagnostics
    if (isUnclosed(draft, node)) yield diagnose('passage-unclosed', { start: at.start, end: at.start + 8 }, {})
  }
}

function* unclosed(draft: Draft, at: Diagnostic['at']): Generator<Diagnostic> {
  for (const match of textAt(draft, at).matchAll(/(?<!\\)\{\{/g)) {
    const start = at.start + match.index
    yield diagnose('placeholder-unclosed', { start, end: start + 2 }, {})
  }
}

/** In the order of the draft; at one place, in the order of their codes. */
function inOrder(findings: readonly Diagnostic[]): Diagnostic[] {
  return [...findings].sort((a, b) => a.at.start - b.at.start || (a.code < b.code ? -1 : Number(a.code > b.code)))
}
