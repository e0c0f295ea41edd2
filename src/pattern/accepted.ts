import type { Diagnostic, Source, Span } from '../diagnostic/index.ts'
import { catalogue, diagnose, nearestTo, placeOf } from '../diagnostic/index.ts'
import type { Ledger, LedgerRow } from '../rows/ledger.ts'
import type { Draft } from './draft.ts'

/** A finding that the designer lets stand, as the front matter says it. */
interface Acceptance {
  readonly code: string
  readonly at: string
  readonly why: string
}

function plain(text: string): string {
  return text
    .toLowerCase()
    .replace(/[–—]/g, '-')
    .replace(/[\s*_]+/g, ' ')
    .trim()
}

function lineAt(source: Source, offset: number): string {
  const { text, lineStarts } = source
  const { line } = placeOf(source, offset)
  return text.slice(lineStarts[line - 1] ?? 0, lineStarts[line] ?? text.length)
}

/** `Rnd 2`, `Cowl, Rnd 2`, `Cowl`: the ways in which a row's place is named. */
function namesOf({ piece, label }: LedgerRow): readonly string[] {
  return (label === null ? [piece] : [label, `${piece}, ${label}`, `${piece} ${label}`, piece]).map(plain)
}

/** Whether a text holds some words as whole words: `Rnd 2` is not in `Rnd 21`. */
function holds(text: string, words: string): boolean {
  const edge = /[\p{L}\d]/u
  for (let at = text.indexOf(words); at >= 0; at = text.indexOf(words, at + 1)) {
    if (!edge.test(text[at - 1] ?? '') && !edge.test(text[at + words.length] ?? '')) return true
  }
  return false
}

/** Whether a row begins with a label as it is written: `Rows 5–18`. */
function opensWith({ at }: LedgerRow, label: string, { text }: Source): boolean {
  const rest = plain(text.slice(at.start, at.end))
  return rest.startsWith(label) && /^[\s:.(]/.test(rest.slice(label.length))
}

/**
 * Whether a finding is where an acceptance says: in a row or piece of that name, on a line of that number, or outside of
 * rows on a line with those words.
 */
function isAt({ at }: Diagnostic, place: string, source: Source, rows: readonly LedgerRow[]): boolean {
  const wanted = plain(place)
  const line = /^(?:line )?(\d+)$/.exec(wanted)?.[1]
  if (line !== undefined) return placeOf(source, at.start).line === Number(line)
  const here = rows.filter((row) => row.at.start <= at.start && at.start < row.at.end)
  if (here.length > 0) return here.some((row) => namesOf(row).includes(wanted) || opensWith(row, wanted, source))
  return wanted !== '' && holds(plain(lineAt(source, at.start)), wanted)
}

function accepted(diagnostic: Diagnostic, why: string): Diagnostic {
  return { ...diagnostic, severity: 'note', accepted: why }
}

function unmatched({ code, at: place }: Acceptance, placeOfKey: (key: 'code' | 'at') => Span): Diagnostic {
  const known = Object.keys(catalogue)
  return known.includes(code)
    ? diagnose('accepted-nothing', placeOfKey('at'), { code, place })
    : diagnose('accepted-unknown', placeOfKey('code'), { code, nearest: nearestTo(code, known) })
}

/** The findings, those that the draft accepts as notes with the reason; and acceptances that match nothing. */
export function withAccepted(
  { facts, source }: Draft,
  { rows }: Ledger,
  findings: readonly Diagnostic[],
): readonly Diagnostic[] {
  const acceptances: readonly Acceptance[] = facts.facts.accepted
  if (acceptances.length === 0) return findings
  const used = new Set<Acceptance>()
  const settled = findings.map((each) => {
    const match = acceptances.find(({ code, at }) => code === each.code && isAt(each, at, source, rows))
    if (match === undefined) return each
    used.add(match)
    return accepted(each, match.why)
  })
  const idle = acceptances.flatMap((each, index) =>
    used.has(each) ? [] : [unmatched(each, (key) => facts.locate('accepted', index, key))],
  )
  return [...settled, ...idle]
}
