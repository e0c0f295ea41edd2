import type { Operand, Operation } from './content.ts'

/** A stretch of marked content that something is drawn in. */
export interface Mark {
  readonly tag: string
  /** Number in the structure; null outside of it. */
  readonly id: number | null
  readonly entries: ReadonlyMap<string, Operand>
}

/** Something drawn: letters by their codes, or anything else. */
export interface Drawn {
  readonly kind: 'text' | 'path' | 'object'
  /** Name of the font that letters are in. */
  readonly font: string
  readonly codes: readonly number[]
  readonly marks: readonly Mark[]
}

export interface MarkedPage {
  readonly drawn: readonly Drawn[]
  /** Marks in the order in which they begin, each with those around it. */
  readonly begun: readonly { readonly mark: Mark; readonly around: readonly Mark[] }[]
  /** Marks that are closed more or less often than they are opened. */
  readonly balance: number
}

const painting = new Set(['S', 's', 'f', 'F', 'f*', 'B', 'B*', 'b', 'b*', 'sh'])

/** Follows the marked content of a page (ISO 32000-1, 14.6). */
export function markedContent(operations: readonly Operation[]): MarkedPage {
  const drawn: Drawn[] = []
  const begun: { mark: Mark; around: readonly Mark[] }[] = []
  let marks: readonly Mark[] = []
  let font = ''
  let closed = 0
  for (const { operator, operands } of operations) {
    if (operator === 'BDC' || operator === 'BMC') {
      const mark = markOf(operands)
      begun.push({ mark, around: marks })
      marks = [...marks, mark]
    } else if (operator === 'EMC') {
      closed += 1
      marks = marks.slice(0, -1)
    } else if (operator === 'Tf') font = nameOf(operands[0])
    else if (operator === 'TJ' || operator === 'Tj') drawn.push({ kind: 'text', font, codes: codesOf(operands), marks })
    else if (operator === 'Do') drawn.push({ kind: 'object', font: nameOf(operands[0]), codes: [], marks })
    else if (painting.has(operator)) drawn.push({ kind: 'path', font: '', codes: [], marks })
  }
  return { drawn, begun, balance: begun.length - closed }
}

const nameOf = (operand: Operand | undefined): string => (operand?.kind === 'name' ? operand.value : '')

function markOf([tag, properties]: readonly Operand[]): Mark {
  const entries = properties?.kind === 'dictionary' ? properties.value : new Map<string, Operand>()
  const id = entries.get('/MCID')
  return { tag: nameOf(tag), id: id?.kind === 'number' ? id.value : null, entries }
}

/** Codes of two bytes, as every font of ours takes them. */
function codesOf(operands: readonly Operand[]): readonly number[] {
  return operands.flatMap((operand): readonly number[] => {
    if (operand.kind === 'array') return codesOf(operand.value)
    if (operand.kind !== 'string') return []
    return Array.from({ length: operand.value.length / 2 }, (_, index) => {
      return operand.value.charCodeAt(2 * index) * 256 + operand.value.charCodeAt(2 * index + 1)
    })
  })
}
