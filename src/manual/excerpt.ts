import type { Span } from '../diagnostic/index.ts'
import type { SampleDraft } from './sample.ts'
import { textOf } from './sample.ts'

/** Some lines of a sample draft, parted where words are marked. Of lines that were left out, `…` stands alone. */
export interface Excerpt {
  readonly parts: readonly { readonly text: string; readonly marked: boolean }[]
}

const mostLines = 4
const longest = 160

interface Line {
  readonly start: number
  readonly text: string
}

function linesOf(text: string): readonly Line[] {
  let start = 0
  return text.split('\n').map((own) => {
    const line = { start, text: own }
    start += own.length + 1
    return line
  })
}

/** A line that is longer than anybody wants to read, cut around its marked words. */
function cut({ start, text }: Line, at: Span | null): Line {
  if (text.length <= longest) return { start, text }
  const from = Math.max(0, Math.min((at?.start ?? 0) - start - longest / 2, text.length - longest))
  return { start: start + from, text: text.slice(from, from + longest) }
}

function holds({ start, text }: Line, at: Span | null): boolean {
  return at !== null && start <= Math.max(at.start, at.end - 1) && at.start <= start + text.length
}

function* partsOf(line: Line, whole: Line, at: Span | null): Generator<Excerpt['parts'][number]> {
  const { start, text } = line
  const from = at === null || !holds(line, at) ? text.length : Math.max(0, at.start - start)
  const to = at === null ? from : Math.max(from, Math.min(text.length, at.end - start))
  const [before, after] = [
    start > whole.start ? '…' : '',
    start + text.length < whole.start + whole.text.length ? '…' : '',
  ]
  yield { text: before + text.slice(0, from), marked: false }
  if (to > from || (at !== null && at.start === at.end && holds(line, at)))
    yield { text: text.slice(from, to), marked: true }
  yield { text: `${text.slice(to)}${after}`, marked: false }
}

/** Tells lines that a text has not, each of its lines being one line's like. */
function unlike(text: string): (line: string) => boolean {
  const left = new Map<string, number>()
  for (const line of text.split('\n')) left.set(line, (left.get(line) ?? 0) + 1)
  return (line) => {
    const count = left.get(line) ?? 0
    left.set(line, count - 1)
    return count <= 0
  }
}

/** Lines of the files beside a draft that another has otherwise: `bodies.csv: Bust,cm,84,wide`. */
function besideLines(draft: SampleDraft, other: SampleDraft): readonly string[] {
  const own = 'beside' in draft ? Object.entries(draft.beside ?? {}) : []
  const others = 'beside' in other ? other.beside : undefined
  return own.flatMap(([name, text]) => {
    const isNew = unlike(others?.[name] ?? text)
    return text.split('\n').flatMap((line) => (isNew(line) ? [`${name}: ${line}`] : []))
  })
}

/** The lines in which a draft differs from another, and those with words to mark. */
export function excerptOf(draft: SampleDraft, other: SampleDraft, at: Span | null): Excerpt {
  const text = textOf(draft)
  if ('file' in draft && draft.instead !== undefined) return { parts: [{ text: draft.instead, marked: false }] }
  const lines = linesOf(text ?? '')
  const isNew = unlike(textOf(other) ?? '')
  const meant = lines.filter((line) => {
    const own = isNew(line.text) && line.text.trim() !== ''
    return own || holds(line, at)
  })
  const first = Math.max(
    0,
    Math.min(
      meant.findIndex((line) => holds(line, at)),
      meant.length - mostLines,
    ),
  )
  const shown = meant.slice(first, first + mostLines)
  const parts = shown.flatMap((line, index) => {
    const before = shown[index - 1]
    const isNext = before === undefined || lines.indexOf(line) === lines.indexOf(before) + 1
    const lead = before === undefined ? '' : isNext ? '\n' : '\n…\n'
    return [{ text: lead, marked: false }, ...partsOf(cut(line, at), line, at)]
  })
  const beside = besideLines(draft, other).map((line) => ({
    text: `${parts.length > 0 ? '\n' : ''}${line}`,
    marked: false,
  }))
  return { parts: [...parts, ...beside].filter((part) => part.text !== '' || part.marked) }
}
