import { onlyWords } from '../measure/index.ts'
import { textForAll } from '../measure/segment.ts'
import type { Inline } from '../pattern/node.ts'
import type { Run } from './line.ts'
import { everyday } from './look.ts'
import type { Style } from './style.ts'
import { slope, strengthen } from './style.ts'

/** A picture between words: it is drawn between lines. */
export interface InlinePicture {
  readonly src: string
  readonly alt: string
}

export type Piece = Run | InlinePicture

type InlineOf<T extends Inline['type']> = Inline & { readonly type: T }

interface Surroundings {
  readonly style: Style
  /** Names of the sizes, in order. */
  readonly sizes: readonly string[]
}

type Handlers = { readonly [T in Inline['type']]: (node: InlineOf<T>, within: Surroundings) => readonly Piece[] }

const handlers = {
  text: (node, { style }) => [{ text: node.text.replace(/\s*\n\s*/g, ' '), style }],
  term: (node, { style }) => [{ text: node.text, style }],
  value: (node, { style }) => [{ text: textForAll(node.segments), style }],
  emphasis: (node, within) => readInlines(node.children, { ...within, style: slope(within.style) }),
  strong: (node, within) => readInlines(node.children, { ...within, style: strengthen(within.style) }),
  delete: (node, within) => readInlines(node.children, { ...within, style: { ...within.style, strike: true } }),
  code: (node, { style }) => [{ text: node.text, style: { ...style, colour: style.accent } }],
  break: (_, { style }) => [{ text: '\n', style }],
  link: (node, within) => readInlines(node.children, { ...within, style: linked(within.style, node.href) }),
  image: (node) => [{ src: node.src, alt: node.alt }],
  onlyInline: (node, within) => [
    {
      text: `${onlyWords(within.sizes, node.sizes)}: `,
      style: { ...slope(within.style), colour: within.style.accent },
    },
    ...readInlines(node.children, within),
  ],
} satisfies Handlers

function read<T extends Inline['type']>(node: InlineOf<T>, within: Surroundings): readonly Piece[] {
  const table: Handlers = handlers
  return table[node.type](node, within)
}

/** Text in pieces of one look each, and the pictures between them. */
export function readInlines(nodes: readonly Inline[], within: Surroundings): readonly Piece[] {
  return nodes.flatMap((node) => read(node, within))
}

/** Text alone: of a picture its words remain. */
export function readRuns(nodes: readonly Inline[], within: Surroundings): readonly Run[] {
  return readInlines(nodes, within).map((piece) => ('src' in piece ? { text: piece.alt, style: within.style } : piece))
}

/** The words of nodes without their looks, for a bookmark. */
export function plainText(nodes: readonly Inline[], sizes: readonly string[]): string {
  return readRuns(nodes, { style: everyday.styles.text, sizes })
    .map((run) => run.text)
    .join('')
    .replace(/\s+/g, ' ')
    .trim()
}

/** A print-out has no address of its own: only whole addresses become links, the rest stays text. */
function linked(style: Style, href: string): Style {
  return /^(https?:\/\/|mailto:)/i.test(href) ? { ...style, href, colour: style.accent } : style
}
