import { toString as plainText } from 'mdast-util-to-string'
import type { Diagnostic, Outcome } from '../diagnostic/index.ts'
import { diagnose, nearestTo } from '../diagnostic/index.ts'
import { indexesOf } from '../rows/index.ts'
import type { Ledger, WrittenRow } from '../rows/ledger.ts'
import { bodyNodes, type Draft } from './draft.ts'
import type { Film, Moment } from './pattern.ts'

/** The designer's own film, and the rows that a moment of it shows. */
export interface Filmed {
  readonly film: Film | null
  readonly momentOf: (row: WrittenRow) => Moment | null
}

/** Reads what the front matter says of the film; what is wrong with it is reported, and left out. */
export function readFilm(draft: Draft, ledger: Ledger): Outcome<Filmed> {
  const { video } = draft.facts.facts
  if (video === undefined) return { value: { film: null, momentOf: () => null }, diagnostics: [] }
  if (!isSecure(video.url)) {
    const finding = diagnose('film-address', draft.facts.locate('video', 'url'), { url: video.url })
    return { value: { film: null, momentOf: () => null }, diagnostics: [finding] }
  }
  const diagnostics: Diagnostic[] = []
  const shown = new Map<WrittenRow, Moment>()
  const moments = Object.entries(video.at).flatMap(([place, time]) => {
    const moment = momentAt(video.url, place, time)
    if (moment === null) {
      diagnostics.push(diagnose('film-time', draft.facts.locate('video', 'at', place), { time }))
      return []
    }
    diagnostics.push(...placed(moment, draft, ledger, shown))
    return [moment]
  })
  const film: Film = { url: video.url, moments }
  return { value: { film, momentOf: (row) => shown.get(row) ?? null }, diagnostics }
}

/** A page asks no one else for anything, so what it links to may at least be safe on its way. */
function isSecure(url: string): boolean {
  return URL.canParse(url) && new URL(url).protocol === 'https:'
}

/** `8:13`, `1:02:03`; null for what is no time. */
function momentAt(url: string, place: string, time: string): Moment | null {
  const [, hours = '0', minutes = '', seconds = ''] = /^(?:(\d{1,2}):)?(\d{1,3}):([0-5]\d)$/.exec(time.trim()) ?? []
  if (seconds === '') return null
  const start = Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)
  return { place, time: time.trim(), seconds: start, href: addressAt(url, start) }
}

/** The film from a moment on, by the W3C's Media Fragments (2012). An address with a fragment of its own is left as it is. */
function addressAt(url: string, seconds: number): string {
  return url.includes('#') ? url : `${url}#t=${seconds}`
}

/** Puts a moment to the row that it names; a heading may be named too, and none of its rows then has the moment. */
function* placed(moment: Moment, draft: Draft, ledger: Ledger, shown: Map<WrittenRow, Moment>): Generator<Diagnostic> {
  const [label = '', piece = null] = moment.place.split(/,\s*(?=[^,]*$)/).toReversed()
  const rows = writtenRows(ledger, piece, label)
  const pieces = new Set(rows.map((row) => pieceOf(ledger, row)))
  const [row] = rows
  if (row !== undefined && pieces.size === 1) shown.set(row, moment)
  else if (rows.length > 0 || !headings(draft).includes(plain(moment.place)))
    yield diagnose(
      'film-row',
      draft.facts.locate('video', 'at', moment.place),
      details(moment.place, label, [...pieces], ledger),
    )
}

/** Rows by a label as findings name it: `Rnd 7` is within `Rnds 6–18`. */
function writtenRows(ledger: Ledger, piece: string | null, label: string): readonly WrittenRow[] {
  const indexes = indexesOf(ledger, piece, label)
  return ledger.written.filter(({ entries: [first, end] }) => indexes.some((index) => first <= index && index < end))
}

function pieceOf({ rows }: Ledger, { entries: [first] }: WrittenRow): string {
  return rows[first]?.piece ?? ''
}

function details(place: string, label: string, pieces: readonly string[], { rows }: Ledger) {
  const known = rows.flatMap(({ piece, label: own }) => (own === null ? [] : [own, `${piece}, ${own}`]))
  // Another number is another row, not a slip of the pen.
  const numbers = (text: string): string => text.replace(/\D+/g, ' ')
  const alike = known.filter((name) => numbers(name) === numbers(place))
  const nearest = pieces.length > 1 ? `${pieces[0]}, ${label}` : nearestTo(place, alike)
  return { place, pieces, nearest }
}

function headings(draft: Draft): readonly string[] {
  return bodyNodes(draft).flatMap((node) => (node.type === 'heading' ? plain(plainText(node)) : []))
}

function plain(text: string): string {
  return text.toLowerCase().replace(/\s+/g, ' ').trim()
}
