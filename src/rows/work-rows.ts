import type { Diagnostic, Outcome, Span } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import { asAuthorWrites } from './author.ts'
import { createBook } from './book.ts'
import { checkWords } from './check/index.ts'
import type { ReadRow } from './cut.ts'
import { cutRows } from './cut.ts'
import type { Ledger, SpecialNames, WrittenRow } from './ledger.ts'
import { enterRow } from './ledgering.ts'
import { openingNotes } from './notes.ts'
import { openingsIn } from './openings.ts'
import type { Names } from './report.ts'
import { definedStitches } from './special/index.ts'
import type { Counting, Special } from './step.ts'
import type { Dictionary } from './terms/dictionary.ts'
import { dictionaryFor } from './terms/dictionary.ts'
import { usedTerms } from './terms.ts'
import { unknownWords } from './unknown.ts'
import type { Passage, Section, Settings } from './written.ts'

/** The draft's own words at a place, from the passage that holds it. */
function wordsAt(sections: readonly Section[]): (at: Span) => string {
  const passages: Passage[] = sections.flatMap((section) => section.passages)
  return (at) => {
    const passage = passages.find((each) => each.at.start <= at.start && at.end <= each.at.end)
    const text = passage?.text.slice(at.start - passage.at.start, at.end - passage.at.start) ?? ''
    const words = text.replace(/\s+/g, ' ').trim()
    return words.length > 80 ? `${words.slice(0, 77)}…` : words
  }
}

function notesIn(prose: readonly string[], dictionary: Dictionary): ReadonlyMap<number, Counting> {
  const said = new Map<number, Counting>()
  for (const text of prose) for (const [chains, counting] of openingNotes(text, dictionary)) said.set(chains, counting)
  return said
}

/** The count where it stands after the steps; null where it stands among them, or in another passage. */
function statedAfter({ at, steps, stated }: ReadRow): Span | null {
  return stated !== null && steps.end <= stated.at.start && stated.at.end <= at.end ? stated.at : null
}

/** Whether a finding tells once more what its words contradict in themselves. */
function isContradicted({ at }: Diagnostic, contradicted: readonly Diagnostic[]): boolean {
  return contradicted.some((each) => each.severity === 'error' && at.start <= each.at.start && each.at.end <= at.end)
}

function written(row: ReadRow, entries: readonly [number, number]): WrittenRow {
  // A label may stand in a passage before the row's own.
  const own = row.label !== null && row.label.at.start >= row.at.start && row.label.at.end <= row.at.end
  return {
    at: row.at,
    label: own ? (row.label?.at ?? null) : null,
    steps: row.steps,
    stated: statedAfter(row),
    lists: row.lists,
    entries,
  }
}

/** Spellings of the special stitches that the draft defines, well or not, and of those of the trade that it uses. */
function namesOf({ known, unread }: Names, used: ReadonlySet<Special>): SpecialNames {
  const own = [...known].filter(([, special]) => special.at !== null || used.has(special))
  return { ...Object.fromEntries(unread), ...Object.fromEntries(own.map(([spelling, { name }]) => [spelling, name])) }
}

/**
 * Reads the rows of a draft and works every one of them, stitch by stitch, for every size.
 * What could not be read or does not come out is a finding; it never fails.
 */
export function workRows(sections: readonly Section[], settings: Settings): Outcome<Ledger> {
  const dictionary = dictionaryFor(settings.terms)
  const { vocabulary, unread, sections: others, found } = definedStitches(sections, settings.sizes, dictionary)
  const diagnostics: Diagnostic[] = [...found]
  const cut = cutRows(others, vocabulary, settings.sizes)
  const rules = { said: notesIn(cut.prose, dictionary), ...openingsIn(cut.rows) }
  const book = asAuthorWrites(cut.rows, rules, (rows, habits) => {
    const fresh = createBook(
      settings,
      dictionary,
      rules,
      wordsAt(sections),
      { known: vocabulary.specials, unread },
      habits,
    )
    for (const row of rows) enterRow(fresh, row)
    return fresh
  })
  const used = usedTerms(cut.rows, dictionary)
  for (const special of used.specials) {
    const at = used.terms.find((term) => term.abbreviation === special.name)?.at
    if (special.at !== null || at === undefined) continue
    diagnostics.push(diagnose('special-undefined', at, { name: special.name, meaning: special.meaning }))
  }
  const rows = book.rows
  const contradicted = checkWords(cut.rows, others, vocabulary)
  const writtenRows = cut.rows.flatMap((row, index) => (row.again ? [] : [written(row, book.entries[index] ?? [0, 0])]))
  return {
    value: {
      rows,
      fabric: book.fabric,
      kinds: book.kinds.list,
      written: writtenRows,
      terms: used.terms,
      names: namesOf({ known: vocabulary.specials, unread }, used.specials),
      unknown: unknownWords(cut.rows, dictionary, vocabulary.specials),
    },
    diagnostics: [
      ...diagnostics,
      ...cut.diagnostics,
      ...contradicted,
      ...book.found.filter((each) => !isContradicted(each, contradicted)),
    ],
  }
}
