import type { Nodes, Root } from 'mdast'
import { createSource, type Span } from '../diagnostic/index.ts'
import { type Answer, type Program, type Solver, tokenize } from '../formula/index.ts'
import type { FileBeside } from '../grading/index.ts'
import { type Draft, textAt, walk } from '../pattern/draft.ts'
import type { Facts } from '../pattern/facts.ts'
import type { Reach } from '../pattern/grade.ts'
import type { Pattern } from '../pattern/pattern.ts'
import type { Worked } from '../pattern/work.ts'
import { type Anchors, anchorsIn } from './anchors.ts'

/**
 * A draft that has been read, with all that working it needs and without what reading it needed, as plain data: the facts
 * are checked, the Markdown is parsed. A page's script loads it when a reader wants numbers of their own. What the
 * designer wrote for themselves, comments and reasons, is left out.
 */
export interface Recipe {
  readonly slug: string
  readonly text: string
  readonly facts: Facts
  /** Where facts stand, by their paths as JSON. */
  readonly places: Readonly<Record<string, readonly [start: number, end: number]>>
  readonly tree: Root
  readonly shift: number
  readonly bodyStart: number
  /** Files from beside the draft, by their paths. */
  readonly beside: Readonly<Record<string, FileBeside>>
  /** What linked counts came to, by their problems. */
  readonly answers: Readonly<Record<string, Answer>>
  readonly anchors: Anchors
  /** What its readers may change. */
  readonly adjustables: Pattern['adjustables']
}

/** What a draft asked for from outside the core as it was worked, and what it got. */
export interface Asked {
  readonly beside: Map<string, FileBeside>
  readonly answers: Map<string, Answer>
}

/** The same reach, which writes down what it is asked. */
export function listening({ solver, readBeside }: Reach, asked: Asked): Reach {
  return {
    readBeside: readBeside === null ? null : (path) => noted(asked.beside, path, readBeside(path)),
    solver: solver === null ? null : (program) => noted(asked.answers, keyOf(program), solver(program)),
  }
}

function noted<T>(list: Map<string, T>, key: string, answer: T): T {
  list.set(key, answer)
  return answer
}

/** A problem by its own text, in short; infinite bounds count as such. */
function keyOf(program: Program): string {
  const text = JSON.stringify(program, (_, value: unknown) =>
    typeof value === 'number' && !Number.isFinite(value) ? String(value) : value,
  )
  let [one, other] = [0, text.length]
  for (let at = 0; at < text.length; at += 1) {
    one = (Math.imul(one, 31) + text.charCodeAt(at)) | 0
    other = (Math.imul(other ^ text.charCodeAt(at), 16_777_619) + at) | 0
  }
  return `${(one >>> 0).toString(36)}-${(other >>> 0).toString(36)}`
}

type Path = readonly (string | number)[]

export function packRecipe({ draft, pattern }: Pick<Worked, 'draft' | 'pattern'>, asked: Asked): Recipe {
  const { slug, shift, bodyStart } = draft
  const facts: Facts = { ...draft.facts.facts, accepted: [] }
  const paths = pathsIn(facts)
  const places = paths.map((path): [string, Span] => [JSON.stringify(path), draft.facts.locate(...path)])
  // Groups of the front matter may have remarks between their lines, and what is not there is placed at all of it.
  const whole = draft.facts.locate()
  const kept = places.flatMap(([, at], index) =>
    isGroup(facts, paths[index] ?? []) || (at.start === whole.start && at.end === whole.end) ? [] : [at],
  )
  return {
    slug,
    text: withoutRemarks(draft, kept),
    facts,
    places: Object.fromEntries(places.map(([path, { start, end }]) => [path, [start, end]])),
    tree: withoutFormulas(draft.tree),
    shift,
    bodyStart,
    beside: Object.fromEntries(asked.beside),
    answers: Object.fromEntries(asked.answers),
    anchors: anchorsIn(pattern),
    adjustables: pattern.adjustables,
  }
}

/** The path of everything in the facts, as it is asked for: a single swatch has no name. */
function pathsIn(facts: Facts): Path[] {
  const below = (value: unknown, path: Path): Path[] => {
    const own = path.length === 0 ? [] : [path.filter((part) => part !== '')]
    if (Array.isArray(value)) return [...own, ...value.flatMap((each: unknown, index) => below(each, [...path, index]))]
    if (typeof value !== 'object' || value === null) return own
    return [...own, ...Object.entries(value).flatMap(([key, each]) => below(each, [...path, key]))]
  }
  return below(facts, [])
}

/** `swatch`, `yarn`, `reader`: what holds other facts at the top of a draft. */
function isGroup(facts: Facts, path: Path): boolean {
  const value = new Map<string | number | undefined, unknown>(Object.entries(facts)).get(path[0])
  return path.length === 1 && typeof value === 'object'
}

/** The draft's text with blanks for what no face shows and no formula needs, so that every offset stays. */
function withoutRemarks(draft: Draft, kept: readonly Span[]): string {
  const { text } = draft.source
  const head = blank(text.slice(0, draft.bodyStart)).split('')
  for (const { start, end } of kept) {
    for (let at = start; at < Math.min(end, draft.bodyStart); at += 1) head[at] = text[at] ?? ' '
  }
  let body = head.join('') + text.slice(draft.bodyStart)
  for (const node of walk(draft.tree.children)) {
    if (!isGrading(node) || node.position === undefined) continue
    const at = {
      start: (node.position.start.offset ?? 0) + draft.shift,
      end: (node.position.end.offset ?? 0) + draft.shift,
    }
    const plain = tokenize(textAt(draft, at))
      .map(({ kind, text }) => (kind === 'comment' ? blank(text) : text))
      .join('')
    body = body.slice(0, at.start) + plain + body.slice(at.end)
  }
  return body
}

function blank(text: string): string {
  return text.replace(/[^\r\n]/g, ' ')
}

function isGrading(node: Nodes): boolean {
  return node.type === 'code' && node.lang === 'grading'
}

/** Formulas are read from the text; what the tree says of them besides is not needed. */
function withoutFormulas(tree: Root): Root {
  const copy = structuredClone(tree)
  for (const node of walk(copy.children)) if (node.type === 'code' && node.lang === 'grading') node.value = ''
  return copy
}

/** A recipe as the draft that it was packed from. Without a solver, linked problems that were not solved then stay undecided. */
export function unpackRecipe(recipe: Recipe, solver: Solver | null): { readonly draft: Draft; readonly reach: Reach } {
  const { slug, text, facts, places, tree, shift, bodyStart, beside, answers } = recipe
  const draft: Draft = {
    slug,
    source: createSource(slug, text),
    facts: { facts, locate: (...path) => placeOf(path, places) },
    tree,
    shift,
    bodyStart,
  }
  return {
    draft,
    reach: {
      solver: (program) => answers[keyOf(program)] ?? solver?.(program) ?? { kind: 'undecided' },
      readBeside: (path) => beside[path] ?? { kind: 'missing' },
    },
  }
}

/** What has no place of its own stands at the top. */
function placeOf(path: Path, places: Recipe['places']): Span {
  const [start, end] = places[JSON.stringify(path)] ?? [0, 0]
  return { start, end }
}

/** Whether the text asks for drawings. */
export function asksForDrawings({ anchors }: Recipe): boolean {
  return anchors.drawing.length > 0
}
