import type { Diagnostic, Outcome, Source, Span } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'

/** Where a draft's front matter and body stand. */
export interface FrontMatter {
  /** The YAML between the fences, fences left out. */
  readonly yaml: Span
  /** Offset of the first character after the closing fence's line. */
  readonly bodyStart: number
}

const opening = /^\uFEFF?(?:[ \t]*\r?\n)*---[ \t]*(?:\r?\n|$)/
const closing = /^(?:---|\.\.\.)[ \t]*$/m

/** Finds the front matter at the top of a draft; null, with a finding, where there is none to read. */
export function findFrontMatter(source: Source): Outcome<FrontMatter | null> {
  const fence = opening.exec(source.text)
  if (fence === null) return missing(source)
  const start = fence[0].length
  const end = closing.exec(source.text.slice(start))
  if (end === null) {
    const at = { start: fence[0].indexOf('---'), end: fence[0].indexOf('---') + 3 }
    return refuse(diagnose('front-matter-unclosed', at, {}))
  }
  const afterFence = start + end.index + end[0].length
  const lineEnd = source.text.indexOf('\n', afterFence)
  const bodyStart = lineEnd === -1 ? source.text.length : lineEnd + 1
  return { value: { yaml: { start, end: start + end.index }, bodyStart }, diagnostics: [] }
}

function missing(source: Source): Outcome<null> {
  const end = source.text.slice(0, source.lineStarts[1] ?? source.text.length).trimEnd().length
  return refuse(diagnose('front-matter-missing', { start: 0, end }, {}))
}

function refuse(diagnostic: Diagnostic): Outcome<null> {
  return { value: null, diagnostics: [diagnostic] }
}
