import type { CompileContext, Extension as FromMarkdown, Token } from 'mdast-util-from-markdown'
import type { Placeholder } from '../../src/pattern/placeholder.ts'

/** Turns the tokens of a placeholder into its node. */
export function placeholderFromMarkdown(): FromMarkdown {
  return { enter: { placeholder: enter }, exit: { placeholder: exit } }
}

function enter(this: CompileContext, token: Token): undefined {
  const written = this.sliceSerialize(token)
  const node: Placeholder = { type: 'placeholder', value: written.slice(2, -2) }
  this.enter(node, token)
}

function exit(this: CompileContext, token: Token): undefined {
  this.exit(token)
}
