import { createSource, type Outcome, type Source } from '../src/diagnostic/index.ts'
import type { Solver } from '../src/formula/index.ts'
import type { Pattern } from '../src/pattern/pattern.ts'
import type { GivenFacts } from '../src/pattern/read-facts.ts'
import { workDraft } from '../src/pattern/resolve.ts'
import { prints } from '../src/print/printable.ts'
import type { Ledger } from '../src/rows/ledger.ts'
import { parseMarkdown, withoutFacts, withoutIndents } from './markdown.ts'
import type { Beside } from './read-beside.ts'

/** A draft, read and resolved on its own, without a site around it. */
export interface ReadDraft {
  readonly source: Source
  readonly outcome: Outcome<Pattern | null>
  /** Every row as it was worked; null with the pattern. */
  readonly ledger: Ledger | null
}

/**
 * Reads and resolves a draft's text. `name` is what findings call the file, `slug` the pattern's short name; `solver` is
 * needed where counts are linked, `beside` where the draft has a folder with a body table of its own or pictures, `given` where it has no
 * front matter. Of a `.txt` file the indents mean nothing.
 */
export function readDraft(
  name: string,
  slug: string,
  text: string,
  solver: Solver | null = null,
  beside: Beside | null = null,
  given: GivenFacts = {},
): ReadDraft {
  const source = createSource(name, text)
  const written = name.endsWith('.txt') ? withoutIndents(text) : text
  const parse = (bodyStart: number) => ({ tree: parseMarkdown(withoutFacts(written, bodyStart)), shift: 0 })
  const { value, diagnostics } = workDraft({ source, slug, parse, solver, ...beside, prints, given })
  return { source, outcome: { value: value?.pattern ?? null, diagnostics }, ledger: value?.ledger ?? null }
}
