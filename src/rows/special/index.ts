import type { Diagnostic } from '../../diagnostic/index.ts'
import type { Vocabulary } from '../reader.ts'
import type { Special } from '../step.ts'
import type { Dictionary } from '../terms/dictionary.ts'
import type { Section } from '../written.ts'
import { readInline } from './inline.ts'
import { wellKnownSpecials, wordsOfName } from './known.ts'
import { enterNamed } from './named.ts'
import type { Defining } from './sections.ts'
import { definesStitches, readDefinitions } from './sections.ts'

export { wellKnownSpecials } from './known.ts'

/** The special stitches of a draft, and what is left of it without their definitions. */
export interface DefinedStitches {
  readonly vocabulary: Vocabulary
  /** Those whose definition could not be read, with the name that is told. */
  readonly unread: ReadonlyMap<string, string>
  readonly sections: readonly Section[]
  readonly found: readonly Diagnostic[]
}

/** Reads all definitions of special stitches, wherever they stand. */
export function definedStitches(
  sections: readonly Section[],
  sizeNames: readonly string[],
  dictionary: Dictionary,
): DefinedStitches {
  const sizes = sizeNames.length
  const specials: Map<string, Special> = wellKnownSpecials(sizes)
  const vocabulary: Vocabulary = { sizes, sizeNames: sizeNames.map(wordsOfName), dictionary, specials }
  const defining: Defining = { vocabulary, specials, unread: new Map(), found: [] }
  for (const section of sections) if (definesStitches(section.title)) readDefinitions(section, defining)
  const others = readInline(
    sections.filter(({ title }) => !definesStitches(title)),
    defining,
  )
  enterNamed(others, specials, dictionary)
  return { vocabulary, unread: defining.unread, sections: others, found: defining.found }
}
