import type { Outcome } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Ledger } from '../../rows/ledger.ts'
import type { Section } from '../../rows/written.ts'
import { cautionsFor, type Said } from '../../safety/index.ts'
import { type Draft, textAt } from '../draft.ts'
import type { Caution } from '../pattern.ts'

/** The cautions that a draft calls for, for its readers, and the same as findings for its designer. */
export function cautionsOf(draft: Draft, sections: readonly Section[], ledger: Ledger): Outcome<readonly Caution[]> {
  const { sizes, fits } = draft.facts.facts
  const found = cautionsFor({
    sizes,
    table: fits?.table.trim() ?? null,
    columns: sizes.map((size, index) => (fits?.sizes === undefined ? size : (fits.sizes[index] ?? null))),
    said: [...saidInFacts(draft), ...sections.flatMap((section) => saidIn(section, draft, ledger))],
  })
  return {
    value: found.map(({ text, source, sizes: own }) => ({
      text,
      source,
      sizes: own.length === sizes.length ? null : own,
    })),
    diagnostics: found.map(({ kind, at, things, sizes: own }) => diagnose(kind, at, { things }, { sizes: own })),
  }
}

type Path = readonly (string | number)[]

function saidInFacts(draft: Draft): Said[] {
  const { summary, kind, notions, finish } = draft.facts.facts
  const at = (where: Said['where'], ...path: Path): Said => {
    const span = draft.facts.locate(...path)
    return { where, text: textAt(draft, span), at: span, section: null, only: null }
  }
  return [
    at('title', 'title'),
    ...(summary === undefined ? [] : [at('title', 'summary')]),
    ...(kind.length === 0 ? [] : [at('title', 'kind')]),
    ...notions.map((_, index) => at('material', 'notions', index)),
    ...finish.map((_, index) => at('material', 'finish', index)),
  ]
}

function saidIn({ title, at, passages }: Section, draft: Draft, { written }: Ledger): Said[] {
  const heading: Said = { where: 'heading', text: textAt(draft, at), at, section: title, only: null }
  const isRow = (start: number, end: number) => written.some((row) => row.at.start >= start && row.at.start < end)
  const said = passages.map((passage): Said => {
    const where = isRow(passage.at.start, passage.at.end) ? 'row' : 'text'
    return { where, text: passage.text, at: passage.at, section: title, only: passage.only }
  })
  return title === null ? said : [heading, ...said]
}
