import type { Root } from 'mdast'
import type { Diagnostic, Outcome, Source } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { Solver } from '../formula/index.ts'
import type { ReadBeside } from '../grading/index.ts'
import { findRow, lastOf, workRows } from '../rows/index.ts'
import type { Ledger, LedgerRow } from '../rows/ledger.ts'
import { withAccepted } from './accepted.ts'
import { askAll } from './answers.ts'
import { buildBlocks } from './blocks.ts'
import { chartFor } from './chart.ts'
import { checkFacts } from './check-facts.ts'
import { abbreviationFindings } from './checks/abbreviations.ts'
import { characterFindings, type Prints } from './checks/characters.ts'
import { completenessFindings } from './checks/complete.ts'
import { materialFindings } from './checks/materials.ts'
import { type LookBeside, pictureFindings } from './checks/pictures.ts'
import { cautionsOf } from './checks/safety.ts'
import { bodyNodes, type Draft, spanOf, textAt, walk } from './draft.ts'
import { readRequest } from './drawings.ts'
import { readFilm } from './film.ts'
import { finishedMeasures } from './finished.ts'
import { findFrontMatter } from './front-matter.ts'
import { gradeDraft, type Reach } from './grade.ts'
import type { Printing } from './inlines.ts'
import { measuresOf } from './measures/index.ts'
import { isOnlySizes, isUnclosed, sizesOf } from './only.ts'
import { overview } from './overview.ts'
import type { Pattern, ValueNode } from './pattern.ts'
import type { Placeholder } from './placeholder.ts'
import type { GivenFacts } from './read-facts.ts'
import { givenFacts, readFacts } from './read-facts.ts'
import { type DrawingSource, schematicFor } from './schematic.ts'
import { cutSections } from './sections.ts'
import { rowSettings } from './settings.ts'
import { inBothTerms } from './terms.ts'
import { namedValues } from './values.ts'

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

/** A pattern with the ledger that it was made from, for what looks into single rows: their places, and what each goes into. */
export interface WorkedDraft {
  readonly pattern: Pattern
  readonly ledger: Ledger
}

/** As `resolveDraft`, with the ledger. */
export function workDraft(text: DraftText): Outcome<WorkedDraft | null> {
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
  const value = assemble(draft, { solver, readBeside }, findings)
  return { value, diagnostics: inOrder(withAccepted(draft, value.ledger, findings)) }
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

function assemble(draft: Draft, reach: Reach, findings: Diagnostic[]): WorkedDraft {
  const graded = gradeDraft(draft, reach, findings)
  findings.push(...checkFacts(draft, graded.settled))
  const answers = askAll(draft, graded.settled, graded.environment, findings)
  const sections = cutSections(draft, answers.holeOf)
  const worked = workRows(sections, rowSettings(draft, graded))
  findings.push(...worked.diagnostics)
  const ledger = worked.value
  findings.push(...abbreviationFindings(draft, ledger), ...completenessFindings(draft))
  findings.push(...materialFindings(draft, graded.environment, ledger))
  const value = numberedValues()
  const rows = (piece: string | null, label: string) => findRow(ledger, piece, label)
  const here = rowAround(draft, ledger)
  const filmed = readFilm(draft, ledger)
  const printing: Printing = {
    draft,
    value,
    printed: (placeholder) => answers.print(placeholder, rows, () => here(placeholder)),
    drawn: drawer(draft, { ledger, environment: graded.environment, sizes: draft.facts.facts.sizes, value }, findings),
    momentOf: filmed.value.momentOf,
  }
  const finished = finishedMeasures(draft, graded, findings)
  const measures = measuresOf({ draft, graded, ledger, finished, findings })
  const facts = overview({ draft, graded, ledger, finished, value, findings })
  const { value: cautions, diagnostics: unsafe } = cautionsOf(draft, sections, ledger)
  findings.push(...unsafe, ...filmed.diagnostics)
  const body = buildBlocks(ledger, printing)
  const { film } = filmed.value
  const pattern = { ...facts, measures, cautions, film, body, rows: ledger.rows, values: namedValues(graded.settled) }
  return { pattern: inBothTerms(pattern, ledger), ledger }
}

/** Draws what the draft asks for, and puts down what can't be drawn. */
function drawer(draft: Draft, source: DrawingSource, findings: Diagnostic[]): Printing['drawn'] {
  return (request) => {
    const asked = readRequest(draft, source.ledger, request, findings)
    if (asked === null) return null
    const { value, diagnostics } =
      asked.drawing === 'schematic'
        ? schematicFor(asked, source)
        : chartFor(asked, { ...source, terms: draft.facts.facts.terms, textAt: (at) => textAt(draft, at) })
    findings.push(...diagnostics)
    return value
  }
}

/** Value nodes numbered in the order of the page. */
function numberedValues(): Printing['value'] {
  let last = 0
  return (segments): ValueNode => {
    last += 1
    return { type: 'value', id: `v${last}`, segments }
  }
}

/** The row that a placeholder stands in: of a range, the last row of each size, whose count a range states. */
function rowAround(draft: Draft, ledger: Ledger): (placeholder: Placeholder) => LedgerRow | null {
  return (placeholder) => {
    const { start, end } = spanOf(draft, placeholder)
    const written = ledger.written.find((row) => row.at.start <= start && end <= row.at.end)
    return written === undefined ? null : lastOf(ledger, written)
  }
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
