import { type Document, isMap, isNode, isPair, isScalar, parseDocument, type YAMLParseError } from 'yaml'
import type { Diagnostic, Outcome, Source, Span } from '../diagnostic/index.ts'
import { diagnose, nearestTo, shift } from '../diagnostic/index.ts'
import { checkFacts, type Facts, type FactsIssue, knownKeys } from './facts.ts'
import type { FrontMatter } from './front-matter.ts'

/** Facts with the way back to where each stands in the draft. */
export interface LocatedFacts {
  readonly facts: Facts
  /** Where the value at a path of the front matter stands, quotes left out; the whole block when it is not there. */
  readonly locate: (...path: readonly (string | number)[]) => Span
}

/** Facts that come with the question, for a draft whose front matter does not say them. */
export type GivenFacts = Readonly<Partial<Pick<Facts, 'title' | 'sizes' | 'terms'>>>

/** The facts of a draft that has no front matter; null where what is given does not suffice. */
export function givenFacts(given: GivenFacts): LocatedFacts | null {
  const { facts } = checkFacts(given)
  const twice = new Set(given.sizes).size < (given.sizes?.length ?? 0)
  return facts === null || twice ? null : { facts, locate: () => ({ start: 0, end: 0 }) }
}

/** Reads and checks the front matter; null, with findings, when the facts can't be used. */
export function readFacts(source: Source, { yaml }: FrontMatter, given: GivenFacts = {}): Outcome<LocatedFacts | null> {
  const text = source.text.slice(yaml.start, yaml.end)
  const document = parseDocument(text, { prettyErrors: false, logLevel: 'silent' })
  const [broken] = document.errors
  // What YAML says after its first complaint is mostly about the same slip.
  if (broken !== undefined) return { value: null, diagnostics: [unreadable(broken, text, yaml)] }
  const { facts, issues } = checkFacts(withGiven(plain(document), given))
  if (facts === null) return { value: null, diagnostics: issues.flatMap((issue) => explain(issue, document, yaml)) }
  const repeated = facts.sizes.find((size, index) => facts.sizes.indexOf(size) !== index)
  const locate: LocatedFacts['locate'] = (...path) => placeOf(document, path, yaml)
  if (repeated !== undefined) {
    return { value: null, diagnostics: [diagnose('size-listed-twice', locate('sizes'), { size: repeated })] }
  }
  return { value: { facts, locate }, diagnostics: [] }
}

function unreadable({ code, message, pos }: YAMLParseError, text: string, block: Span): Diagnostic {
  const closer = /end with a ([\]}])/.exec(message)?.[1]
  if (closer === undefined) {
    return diagnose('front-matter-unreadable', shift({ start: pos[0], end: pos[1] }, block.start), {
      problem: inWords(code, message),
    })
  }
  // YAML notices on the next line that a list was never closed; the designer looks for where it opens.
  const opener = closer === ']' ? '[' : '{'
  const start = Math.max(text.lastIndexOf(opener, pos[0]), 0)
  const problem = `the “${opener}” is never closed with “${closer}”`
  return diagnose('front-matter-unreadable', shift({ start, end: start + 1 }, block.start), { problem })
}

function withGiven(written: unknown, given: GivenFacts): unknown {
  return typeof written === 'object' && written !== null ? { ...given, ...written } : written
}

/** Aliases could make a small file huge; drafts have no need of them. */
function plain(document: Document): unknown {
  try {
    return document.toJS({ maxAliasCount: 100 })
  } catch {
    return {}
  }
}

function placeOf(document: Document, path: readonly PropertyKey[], block: Span): Span {
  const node = document.getIn(path, true)
  const range = isNode(node) ? node.range : undefined
  if (range === undefined || range === null) {
    // A list of one may be written without its brackets.
    if (path[1] === 0 && isMap(document.getIn(path.slice(0, 1), true)))
      return placeOf(document, path.toSpliced(1, 1), block)
    return path.length > 0 ? placeOf(document, path.slice(0, -1), block) : top(block)
  }
  const quoted = isScalar(node) && (node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE') ? 1 : 0
  return shift({ start: range[0] + quoted, end: endOf(node, range[1]) - quoted }, block.start)
}

/** YAML counts the line break after a group of lines to the group. */
function endOf(node: unknown, end: number): number {
  const last = isMap(node) && node.flow !== true ? node.items.at(-1)?.value : undefined
  return isNode(last) && last.range ? endOf(last, last.range[1]) : end
}

/** Something that the whole block lacks is reported at its first line. */
function top(block: Span): Span {
  return { start: block.start, end: block.start }
}

function keyPlace(document: Document, path: readonly PropertyKey[], key: string, block: Span): Span {
  const parent = path.length === 0 ? document.contents : document.getIn(path, true)
  if (!isMap(parent)) return placeOf(document, path, block)
  const pair = parent.items.find((item) => isPair(item) && isScalar(item.key) && String(item.key.value) === key)
  const range = pair !== undefined && isScalar(pair.key) ? pair.key.range : undefined
  return range === undefined || range === null
    ? placeOf(document, path, block)
    : shift({ start: range[0], end: range[1] }, block.start)
}

function explain(issue: FactsIssue, document: Document, block: Span): Diagnostic[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) =>
      diagnose('key-unknown', keyPlace(document, issue.path, key, block), {
        key,
        within: keyName(issue.path),
        nearest: nearestTo(key, knownKeys(issue.path)),
      }),
    )
  }
  const at = placeOf(document, issue.path, block)
  const key = keyName(issue.path) ?? 'front matter'
  const missing = issue.code === 'invalid_type' && document.getIn(issue.path) === undefined
  if (missing && issue.path.length > 0) {
    return [diagnose('key-missing', placeOf(document, issue.path.slice(0, -1), block), { key })]
  }
  return [diagnose('fact-wrong', at, { key, problem: expectation(issue) })]
}

/** `swatch.stitches`, `yarn 1: skein`: a path as a designer would say it; null for the front matter itself. */
function keyName(path: readonly PropertyKey[]): string | null {
  if (path.length === 0) return null
  return path.map((part) => (typeof part === 'number' ? `${part + 1}` : String(part))).join(' ')
}

const kinds: Readonly<Record<string, string>> = {
  string: 'text',
  array: 'a list, such as [Small, Large]',
  object: 'a group of keys',
  record: 'a group of keys',
  number: 'a number',
  int: 'a whole number',
}

function expectation(issue: FactsIssue): string {
  if (issue.code === 'invalid_type') return `needs ${kinds[issue.expected] ?? issue.expected}`
  if (issue.code === 'invalid_value') return `must be one of ${issue.values.map(String).join(', ')}`
  if (issue.code === 'invalid_union')
    return issue.message === 'Invalid input' ? 'needs text or a number' : issue.message
  return issue.message
}

/** YAML's own complaints in a designer's words, where they have one. */
function inWords(code: string, message: string): string {
  const known: Readonly<Record<string, string>> = {
    DUPLICATE_KEY: 'this key is given twice',
    TAB_AS_INDENT: 'the line is indented with a tab; use spaces',
    BAD_INDENT: 'this line is indented differently from its neighbours',
    MISSING_CHAR: 'a closing quote, bracket or colon is missing',
    BLOCK_AS_IMPLICIT_KEY: 'a colon inside this text confuses it; put the text in quotes',
  }
  return known[code] ?? message.replace(/ at line \d+, column \d+.*/s, '')
}
