import { createSource, type Outcome, type Source } from '../src/diagnostic/index.ts'
import type { Pattern } from '../src/pattern/pattern.ts'
import { resolveDraft } from '../src/pattern/resolve.ts'
import { parseMarkdown, withoutFacts } from './markdown.ts'

/** A draft, read and resolved on its own, without a site around it. */
export interface ReadDraft {
  readonly source: Source
  readonly outcome: Outcome<Pattern | null>
}

/** Reads and resolves a draft's text. `name` is what findings call the file, `slug` the pattern's short name. */
export function readDraft(name: string, slug: string, text: string): ReadDraft {
  const source = createSource(name, text)
  const parse = (bodyStart: number) => ({ tree: parseMarkdown(withoutFacts(text, bodyStart)), shift: 0 })
  return { source, outcome: resolveDraft({ source, slug, parse }) }
}
