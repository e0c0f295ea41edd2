import type { Options as ToMarkdown } from 'mdast-util-to-markdown'
import type { Placeholder } from '../../src/pattern/placeholder.ts'

/** Writes a placeholder back as it was typed. */
export function placeholderToMarkdown(): ToMarkdown {
  return {
    unsafe: [{ character: '{', after: '[^\\\\]', inConstruct: 'phrasing' }],
    handlers: { placeholder: (node: Placeholder) => `{{${node.value}}}` },
  }
}
