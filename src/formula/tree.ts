import type Fraction from 'fraction.js'
import type { Span } from '../diagnostic/index.ts'
import type { Direction, Format, Unit } from '../measure/index.ts'

/** What a count is rounded to, or asked to be. */
export type Grid =
  | { readonly kind: 'whole' | 'even' | 'odd' }
  | { readonly kind: 'multiple'; readonly of: Expression; readonly plus: Expression | null }

export type Arithmetic = '+' | '-' | '*' | '/'
export type Comparison = '=' | '!=' | '<' | '<=' | '>' | '>='
export type Trend = 'rises' | 'falls' | 'steady'

interface Node<K extends string> {
  readonly kind: K
  readonly at: Span
}

/** A number with its unit, if it has one; `value` is in that unit. */
export interface NumberNode extends Node<'number'> {
  readonly value: Fraction
  readonly unit: Unit | null
}
export interface TextNode extends Node<'text'> {
  readonly text: string
}
export interface NameNode extends Node<'name'> {
  readonly name: string
}
/** `[a, b, c]`: one item for each size, in the order of sizes. */
export interface ListNode extends Node<'list'> {
  readonly items: readonly Expression[]
}
/** `{Child: a, Adult S: b}` */
export interface BySizeNode extends Node<'bySize'> {
  readonly entries: readonly { readonly size: string; readonly at: Span; readonly value: Expression }[]
}
/** A list or a bracket followed by a unit: `[52, 60] cm`, `(2 + 3) cm`. */
export interface WithUnitNode extends Node<'withUnit'> {
  readonly operand: Expression
  readonly unit: Unit
}
export interface NegateNode extends Node<'negate'> {
  readonly operand: Expression
}
export interface BinaryNode extends Node<'binary'> {
  readonly operator: Arithmetic
  readonly left: Expression
  readonly right: Expression
}
export interface CallNode extends Node<'call'> {
  readonly name: string
  readonly nameAt: Span
  readonly arguments: readonly Expression[]
}
/** `X as multiple of 6 + 1 up` */
export interface RoundNode extends Node<'round'> {
  readonly operand: Expression
  readonly to: Grid
  readonly direction: Direction
}
/** What a worked row makes: `total`, `count(dc)`, `total("Sleeve", "Row 3")`. `what` is `total` or a kind of stitch. */
export interface MadeNode extends Node<'made'> {
  readonly what: string
  readonly piece: string | null
  readonly row: string | null
}
export interface CompareNode extends Node<'compare'> {
  readonly operator: Comparison
  readonly left: Expression
  readonly right: Expression
}
export interface LogicNode extends Node<'logic'> {
  readonly operator: 'and' | 'or'
  readonly left: Expression
  readonly right: Expression
}
export interface NotNode extends Node<'not'> {
  readonly operand: Expression
}
/** `X is multiple of 6` */
export interface IsNode extends Node<'is'> {
  readonly operand: Expression
  readonly grid: Grid
}
/** `X rises`: compared across sizes. */
export interface TrendNode extends Node<'trend'> {
  readonly operand: Expression
  readonly trend: Trend
}

export type Expression =
  | NumberNode
  | TextNode
  | Node<'none'>
  | NameNode
  | ListNode
  | BySizeNode
  | WithUnitNode
  | NegateNode
  | BinaryNode
  | CallNode
  | RoundNode
  | MadeNode
  | CompareNode
  | LogicNode
  | NotNode
  | IsNode
  | TrendNode

/** A line of a grading block. */
export type Statement =
  /** `name = formula`; `formula` is null when it could not be read, which has been reported. */
  | {
      readonly kind: 'define'
      readonly name: string
      readonly nameAt: Span
      readonly formula: Expression | null
      readonly at: Span
    }
  /** `name ~ target` */
  | {
      readonly kind: 'link'
      readonly name: string
      readonly nameAt: Span
      readonly target: Expression | null
      readonly at: Span
    }
  | { readonly kind: 'need'; readonly condition: Expression; readonly at: Span }

/** What a placeholder holds. */
export interface Formula {
  readonly expression: Expression
  readonly format: Format | null
  readonly at: Span
}

/** The nodes directly below a node, in the order in which they are written. */
export function children(node: Expression): readonly Expression[] {
  switch (node.kind) {
    case 'list':
      return node.items
    case 'bySize':
      return node.entries.map((entry) => entry.value)
    case 'withUnit':
    case 'negate':
    case 'not':
    case 'trend':
      return [node.operand]
    case 'binary':
    case 'compare':
    case 'logic':
      return [node.left, node.right]
    case 'call':
      return node.arguments
    case 'round':
      return [node.operand, ...gridParts(node.to)]
    case 'is':
      return [node.operand, ...gridParts(node.grid)]
    default:
      return []
  }
}

function gridParts(grid: Grid): readonly Expression[] {
  if (grid.kind !== 'multiple') return []
  return grid.plus === null ? [grid.of] : [grid.of, grid.plus]
}
