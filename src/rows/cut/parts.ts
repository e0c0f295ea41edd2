import type { Chunk } from './passage-text.ts'
import { blanked } from './passage-text.ts'
import type { SizeClause } from './size-clause.ts'
import { sizeClauseAt } from './size-clause.ts'
import type { SizeNames } from './size-names.ts'

export type Only = readonly number[] | null

/** Words of a row that are for some sizes, or with null for all. */
export interface Part {
  readonly only: Only
  readonly text: string
  readonly start: number
}

/** A chunk without the words that say for which sizes it is. */
export interface Parts {
  /** The sizes of the row; null for all. */
  readonly only: Only
  /** The first holds the label; further ones are for the sizes that each names. */
  readonly parts: readonly Part[]
  /** It begins by naming sizes, all of them maybe. */
  readonly opens: 'some' | 'all' | null
  /** The sizes are all that it says. */
  readonly alone: boolean
  /** It is for some sizes only, but which could not be made out. */
  readonly unknown: boolean
}

const labelZone = 120
const label =
  /^[\s*_>#•~()[\]☐]*(?:(?:RS|WS)[)\]]?\s+)?(?:\p{L}[\p{L}'’-]*\s+){0,4}(?:(?:rows?|rnds?|rds?|rounds?)\b\.?\s*#?(?:\d|one\b)|r\s?\d|(?:\d+(?:st|nd|rd|th)|first|second|third|fourth|fifth|sixth|next)\s+(?:rows?|rnds?|rounds?)|\d+[.):])/iu

export function bothOnly(first: Only, second: Only): Only {
  if (first === null) return second
  return second === null ? first : first.filter((size) => second.includes(size))
}

/** Sizes named in the label, `Row 5 (M and L only):`, `Rnd 7, sizes B, C and D:`, or right after it, `Row 5: (M only)`. */
function inLabel(text: string, names: SizeNames, sizes: number): SizeClause | null {
  const found = label.exec(text)
  if (found === null) return null
  const colon = text.indexOf(':', found[0].length)
  const zone = text.slice(0, colon < 0 || colon > labelZone ? Math.min(labelZone, text.length) : colon + 1)
  const places = /[([,]|\s[–-]\s|\s(?=(?:for|sizes?)\b)|:/giu
  places.lastIndex = found[0].length
  for (let match = places.exec(zone); match !== null; match = places.exec(zone)) {
    const opens = match[0] === '(' || match[0] === '['
    const after = opens ? match.index : match.index + match[0].length
    const clause = sizeClauseAt(text, after, names, sizes)
    if (clause === null) continue
    const last = match[0] === ':'
    // `Row 5: M: …` is the first of several, each for its own sizes.
    if (last && !(opens || /\bonly\b|^\s*\(/i.test(text.slice(after, clause.end)))) return null
    return { ...clause, start: last ? after : match.index }
  }
  return null
}

/** Where a sentence or line begins. */
function* sentenceStarts(text: string, from: number): Generator<number> {
  const starts = /[.;:)\]]\s+|\n/g
  starts.lastIndex = from
  for (let match = starts.exec(text); match !== null; match = starts.exec(text)) yield match.index + match[0].length
}

/** Clauses at the beginning of sentences after `from`, each for sizes of its own. */
function later(text: string, from: number, names: SizeNames, sizes: number): readonly SizeClause[] {
  const found: SizeClause[] = []
  const seen = new Set<number>()
  for (const start of [from, ...sentenceStarts(text, from)]) {
    if (start < (found.at(-1)?.end ?? 0)) continue
    const clause = sizeClauseAt(text, start, names, sizes, found.length === 0 ? null : [...seen])
    if (clause === null || clause.only === null || clause.only.some((size) => seen.has(size))) continue
    for (const size of clause.only) seen.add(size)
    found.push(clause)
  }
  return found
}

/** Sizes that clauses within a text name, after its label where it has one. */
export function sizesWithin(text: string, names: SizeNames, sizes: number): readonly number[] {
  return later(text, label.exec(text)?.[0].length ?? 0, names, sizes).flatMap(({ only }) => only ?? [])
}

const someSizes =
  /\bsizes?\s[^:.()\n]{1,60}?\s*only\b|[([](?!(?:RS|WS|BLO?|FLO?|MC|CC)\b)[A-Z0-9]{1,3}(?:(?:[\s,/&]|and)+[A-Z0-9]{1,3})*\s+only[)\]]/

/** Takes a chunk apart by the sizes that its words are for. */
export function partsOf({ text, start }: Chunk, names: SizeNames, sizes: number): Parts {
  if (sizes < 2) return { only: null, parts: [{ only: null, text, start }], opens: null, alone: false, unknown: false }
  const first = sizeClauseAt(text, 0, names, sizes)
  const own = first ?? inLabel(text, names, sizes)
  const isLabel = first === null && own !== null
  const rest = own === null ? text : blanked(text, own.start, own.end, isLabel && own.colon)
  const from = own?.end ?? label.exec(text)?.[0].length ?? 0
  const clauses = later(text, from, names, sizes)
  const several = clauses.length > 1 || (clauses.length === 1 && own !== null && disjoint(own, clauses))
  const unknown =
    own?.only?.length === 0 || (own === null && label.test(text) && someSizes.test(text.slice(0, labelZone)))
  const opens = first === null ? null : first.only === null ? 'all' : 'some'
  const alone = rest.trim().replace(/^[*_:\s.]+$/, '') === ''
  if (!several) return { only: own?.only ?? null, parts: [{ only: null, text: rest, start }], opens, alone, unknown }
  return { ...cutAt(rest, start, own, clauses), opens, alone: false, unknown }
}

function disjoint(own: SizeClause, others: readonly SizeClause[]): boolean {
  return own.only !== null && others.every((other) => other.only?.every((size) => !own.only?.includes(size)) === true)
}

/** `Row 5: Sizes S and M: sc across. Size L: dc across.`: the words before the first clause are for all of them. */
function cutAt(
  text: string,
  start: number,
  own: SizeClause | null,
  clauses: readonly SizeClause[],
): { readonly only: Only; readonly parts: readonly Part[] } {
  const [first] = clauses
  const lead = text.slice(0, first?.start ?? text.length)
  const ownIsPart = own !== null && clauses.every((clause) => clause.start > own.start)
  const parts: Part[] = [{ only: ownIsPart ? own.only : null, text: lead, start }]
  clauses.forEach((clause, index) => {
    const end = clauses[index + 1]?.start ?? text.length
    parts.push({ only: clause.only, text: text.slice(clause.end, end), start: start + clause.end })
  })
  return { only: null, parts }
}
