import type { Drawing, Figure } from '../drawing/drawing.ts'
import type { Term } from '../measure/segment.ts'
import type { Moment, ValueNode } from './pattern.ts'

/**
 * The resolved text of a pattern: our own nodes, neither Markdown nor HTML. Every renderer is a table
 * with one handler for each `type`.
 */
export type Inline =
  | { readonly type: 'text'; readonly text: string }
  /** A name of the trade: a stitch, an abbreviation. */
  | { readonly type: 'term'; readonly text: string; readonly term: Term }
  | ValueNode
  | Marked<'emphasis'>
  | Marked<'strong'>
  | Marked<'delete'>
  | { readonly type: 'code'; readonly text: string }
  | { readonly type: 'break' }
  | { readonly type: 'link'; readonly href: string; readonly children: readonly Inline[] }
  | { readonly type: 'image'; readonly src: string; readonly alt: string }
  /** Words for some sizes only; `sizes` are positions in the list of sizes. */
  | { readonly type: 'onlyInline'; readonly sizes: readonly number[]; readonly children: readonly Inline[] }

/** One member for each mark, so that `InlineOf` finds it by its type. */
interface Marked<T extends 'emphasis' | 'strong' | 'delete'> {
  readonly type: T
  readonly children: readonly Inline[]
}

export type Block =
  | { readonly type: 'heading'; readonly depth: number; readonly id: string; readonly children: readonly Inline[] }
  | { readonly type: 'paragraph'; readonly children: readonly Inline[] }
  | {
      readonly type: 'list'
      readonly ordered: boolean
      readonly start: number
      readonly items: readonly (readonly Block[])[]
    }
  | {
      readonly type: 'table'
      readonly align: readonly ('left' | 'right' | 'center' | null)[]
      readonly head: readonly (readonly Inline[])[]
      readonly rows: readonly (readonly (readonly Inline[])[])[]
    }
  | { readonly type: 'quote'; readonly children: readonly Block[] }
  | { readonly type: 'codeBlock'; readonly text: string }
  | { readonly type: 'rule' }
  | { readonly type: 'only'; readonly sizes: readonly number[]; readonly children: readonly Block[] }
  | RowBlock
  | DrawingBlock

/** A row or round: what the reader follows, and ticks off. */
export interface RowBlock {
  readonly type: 'row'
  /** Anchor of the row on the page, unique in the pattern: `cowl-rnd-2`. */
  readonly id: string
  /** `Rnds 6–18 (RS):`; empty for a row without a label. */
  readonly label: readonly Inline[]
  readonly steps: readonly Inline[]
  /** The stated count with its brackets; empty when none is stated. */
  readonly stated: readonly Inline[]
  /** Its entries in `Pattern.rows`: the first and the one after the last. */
  readonly entries: readonly [first: number, end: number]
  /** How many rows it stands for, for the size that works most of them: 1 unless it is a range. */
  readonly times: number
  /** Sizes that work it, as positions; null for all. */
  readonly only: readonly number[] | null
  /** Where the designer's film shows it; null where it does not. */
  readonly moment: Moment | null
}

/** A schematic or a stitch chart that the draft asks for, with its caption. */
export interface DrawingBlock {
  readonly type: 'drawing'
  /** Anchor of the drawing on the page, unique in the pattern. */
  readonly id: string
  readonly caption: readonly Inline[]
  readonly figure: Omit<Figure, 'key'>
  /** The symbols of a chart with their words; empty for a schematic. */
  readonly key: readonly { readonly symbol: Drawing; readonly words: readonly Inline[] }[]
}

export type BlockOf<T extends Block['type']> = Extract<Block, { readonly type: T }>
export type InlineOf<T extends Inline['type']> = Extract<Inline, { readonly type: T }>
