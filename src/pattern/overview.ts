import type { Diagnostic } from '../diagnostic/index.ts'
import { toFit, wearersOf } from '../grading/index.ts'
import { always, printRange, type Segment, textForAll } from '../measure/index.ts'
import type { Ledger } from '../rows/ledger.ts'
import type { Draft } from './draft.ts'
import type { FinishedMeasure } from './finished.ts'
import { fitOf, leadingUnit } from './fit.ts'
import { gaugeLines } from './gauge.ts'
import type { Graded } from './grade.ts'
import type { Printing } from './inlines.ts'
import { materials } from './materials.ts'
import type { Abbreviation, MeasureLine, Pattern, PieceUse } from './pattern.ts'
import { otherEntry } from './terms.ts'
import { type Making, makingOf, yarnUse } from './yarn.ts'

export interface OverviewParts {
  readonly draft: Draft
  readonly graded: Graded
  readonly ledger: Ledger
  readonly finished: readonly FinishedMeasure[]
  readonly value: Printing['value']
  /** Where findings go. */
  readonly findings: Diagnostic[]
}

/** Everything of a pattern that stands beside its text: sizes, measures, materials, gauge, abbreviations. */
export function overview(
  parts: OverviewParts,
): Omit<Pattern, 'measures' | 'cautions' | 'film' | 'body' | 'rows' | 'values' | 'adjustables' | 'own'> {
  const { facts } = parts.draft.facts
  const { body } = parts.graded
  const making = makingOf(parts.draft, parts.graded, parts.ledger)
  const yarn = yarnUse({ ...parts, making }, parts.findings)
  const fits = fitsLines(parts)
  return {
    slug: parts.draft.slug,
    title: facts.title,
    summary: facts.summary ?? null,
    lead: facts.summary === undefined ? [] : [always(facts.summary)],
    terms: facts.terms,
    kinds: facts.kind,
    skill: facts.skill ?? null,
    published: facts.published ?? null,
    edition: facts.edition ?? null,
    changes: facts.changes.map(({ edition, date, note }) => ({ edition, date: date ?? null, note })),
    sizes: facts.sizes,
    fits,
    finished: parts.finished.map(({ label, segments }) => measureLine(label, segments, parts)),
    fit: fitOf(parts.graded, parts.finished),
    wearers: body === null ? [] : wearersOf(body),
    materials: materials(facts, yarn, parts.value),
    gauge: gaugeLines(facts, parts.graded.environment),
    abbreviations: abbreviations(parts.ledger, facts.terms),
    readings: [],
    cover: facts.cover ?? null,
    yarn,
    pieces: piecesOf(parts.ledger, making),
  }
}

/** The pieces in the order of the rows. */
function piecesOf({ rows }: Ledger, { times }: Making): PieceUse[] {
  return [...new Set(rows.map(({ piece }) => piece))].map((name) => ({ name, times: times(name) }))
}

function measureLine(label: string, segments: readonly Segment[], { draft, value }: OverviewParts): MeasureLine {
  const cells = draft.facts.facts.sizes.map((_, size) => inCell(segments, size))
  return { label, value: value(segments), cells }
}

/**
 * Alone in a cell, the second system stands in round brackets, as it does for one size, and a number keeps to its
 * unit where a narrow column breaks the line. A measure that a size does not have needs no units.
 */
function inCell(segments: readonly Segment[], size: number): readonly Segment[] {
  const own = segments.filter(({ show }) => show === 'always' || show === size)
  if (/^– [a-z]+ [[(]– [a-z]+[\])]$/.test(textForAll(own))) return [always('–')]
  return joinedAlways(own).map((segment) => ({
    ...segment,
    text: segment.text
      .replace('[', '(')
      .replace(']', ')')
      .replace(/ (mm|cm|m|in|yd|g|kg|oz|lb)\b/g, '\u00a0$1'),
  }))
}

/** One piece for each stretch of one system, shown in every view. */
function joinedAlways(segments: readonly Segment[]): readonly Segment[] {
  const joined: Segment[] = []
  for (const segment of segments) {
    const last = joined.at(-1)
    if (last === undefined || last.system !== segment.system) joined.push({ ...segment, show: 'always' })
    else joined[joined.length - 1] = { ...last, text: last.text + segment.text }
  }
  return joined
}

function fitsLines(parts: OverviewParts): MeasureLine[] {
  const { body, environment } = parts.graded
  const fit = body === null ? null : toFit(body)
  if (fit === null) return []
  const segments = printRange(fit.low, fit.high, leadingUnit(environment))
  return [measureLine(`To fit ${fit.label.toLowerCase()}`, segments, parts)]
}

const alphabet = new Intl.Collator('en')

/** In the order of the alphabet, special stitches among the rest; their definitions stand in the text. */
function abbreviations({ terms, names }: Ledger, own: Pattern['terms']): Abbreviation[] {
  const naming = { terms: own, own: names }
  return [...terms]
    .sort((a, b) => alphabet.compare(a.abbreviation, b.abbreviation))
    .map((term) => ({
      abbreviation: term.abbreviation,
      meaning: term.meaning,
      special: term.special,
      other: otherEntry(term, naming),
    }))
}
