import type { Diagnostic } from '../diagnostic/index.ts'
import { findRow, lastOf, workRows } from '../rows/index.ts'
import type { Ledger, LedgerRow } from '../rows/ledger.ts'
import { askAll } from './answers.ts'
import { type Anchor, buildBlocks } from './blocks.ts'
import { cautionsOf } from './checks/safety.ts'
import { type Draft, spanOf } from './draft.ts'
import type { DrawFigure } from './figures.ts'
import { readFilm } from './film.ts'
import { finishedMeasures } from './finished.ts'
import { type Graded, gradeDraft, type Reach } from './grade.ts'
import type { Printing } from './inlines.ts'
import { measuresOf } from './measures/index.ts'
import { overview } from './overview.ts'
import { adjustablesOf } from './own/adjustables.ts'
import { ownNumbers } from './own/numbers.ts'
import type { Pattern, ValueNode } from './pattern.ts'
import type { Placeholder } from './placeholder.ts'
import { cutSections } from './sections.ts'
import { rowSettings } from './settings.ts'
import { inBothTerms } from './terms.ts'
import { namedValues } from './values.ts'

/** A pattern with the ledger that it was made from, for what looks into single rows: their places, and what each goes into. */
export interface WorkedDraft {
  readonly pattern: Pattern
  readonly ledger: Ledger
}

/** The same with its values, for what checks the draft by them. */
export interface Worked extends WorkedDraft {
  readonly draft: Draft
  readonly graded: Graded
}

/** What working a draft may need beside the core: a page's script has only what its draft asks for. */
export interface Means extends Reach {
  /** Null where the draft asks for no drawing. */
  readonly draw: DrawFigure | null
  /** Anchors for one page. */
  readonly anchors: () => Anchor
}

/**
 * From a draft that has been read to its pattern: grading, placeholders, rows, text. All that has to be done anew when a
 * number changes, and nothing else; it needs neither YAML nor Markdown. Findings go to `findings`.
 */
export function workPattern(draft: Draft, means: Means, findings: Diagnostic[]): Worked {
  const graded = gradeDraft(draft, means, findings)
  const answers = askAll(draft, graded.settled, graded.environment, findings)
  const sections = cutSections(draft, answers.holeOf)
  const worked = workRows(sections, rowSettings(draft, graded))
  findings.push(...worked.diagnostics)
  const ledger = worked.value
  const value = numberedValues()
  const rows = (piece: string | null, label: string) => findRow(ledger, piece, label)
  const here = rowAround(draft, ledger)
  const filmed = readFilm(draft, ledger)
  const printing: Printing = {
    draft,
    value,
    printed: (placeholder) => answers.print(placeholder, rows, () => here(placeholder)),
    drawn: (request) =>
      means.draw?.(request, { draft, ledger, environment: graded.environment, value, findings }) ?? null,
    momentOf: filmed.value.momentOf,
  }
  const finished = finishedMeasures(draft, graded, findings)
  const measures = measuresOf({ draft, graded, ledger, finished, findings })
  const facts = overview({ draft, graded, ledger, finished, value, findings })
  const { value: cautions, diagnostics: unsafe } = cautionsOf(draft, sections, ledger)
  findings.push(...unsafe, ...filmed.diagnostics)
  const body = buildBlocks(ledger, printing, means.anchors())
  const { film } = filmed.value
  const adjustables = adjustablesOf(draft, graded)
  const own = draft.own === undefined ? [] : ownNumbers(adjustables, draft.own.published.pattern.adjustables)
  const values = namedValues(graded.settled)
  const pattern = { ...facts, measures, cautions, film, body, rows: ledger.rows, values, adjustables, own }
  return { pattern: inBothTerms(pattern, ledger), ledger, draft, graded }
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
