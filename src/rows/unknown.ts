import type { Span } from '../diagnostic/index.ts'
import type { ReadRow } from './cut.ts'
import { misspelt, trade } from './nearest.ts'
import type { Special } from './step.ts'
import { commonTerms } from './terms/common.ts'
import type { Dictionary } from './terms/dictionary.ts'

/** A word that stopped the reader and that no list of the trade has, with the nearest one that is known. */
export interface UnknownWord {
  readonly word: string
  readonly nearest: string | null
  /** Where it stands first. */
  readonly at: Span
}

function knownWords(dictionary: Dictionary, specials: ReadonlyMap<string, Special>): ReadonlySet<string> {
  const names = [
    ...dictionary.stitches.keys(),
    ...specials.keys(),
    ...trade,
    ...commonTerms.flatMap((term) => term.written),
  ]
  return new Set(names.flatMap((name) => name.split(' ')))
}

const small =
  /^(?:a|an|the|and|or|of|in|into|to|at|on|by|for|as|is|it|its|this|that|these|with|from|all|you|your|if|then|so|will|be|are)$/

/** Words of unread rows that are not known, each once, in the order of the draft. */
export function unknownWords(
  rows: readonly ReadRow[],
  dictionary: Dictionary,
  specials: ReadonlyMap<string, Special>,
): readonly UnknownWord[] {
  const unread = rows.filter((row) => row.unread !== null)
  if (unread.length === 0) return []
  const known = knownWords(dictionary, specials)
  const found = new Map<string, UnknownWord>()
  for (const { words, unread: stopped } of unread) {
    for (const { kind, text, at } of words) {
      const within = stopped !== null && at.start >= stopped.at.start && at.end <= stopped.at.end
      if (!within || kind !== 'word' || known.has(text) || small.test(text) || found.has(text)) continue
      found.set(text, { word: text, nearest: misspelt([text], known)?.meant ?? null, at })
    }
  }
  return [...found.values()]
}
