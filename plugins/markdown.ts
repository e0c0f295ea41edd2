import type { Root } from 'mdast'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { addDraftSyntax } from './syntax.ts'

const parser = unified()
  .use(remarkParse)
  .use(remarkGfm)
  .use(function draftSyntax() {
    addDraftSyntax(this.data())
  })
  .freeze()

/** A text as a Markdown tree: CommonMark, GFM, placeholders and `:sizes` directives. */
export function parseMarkdown(text: string): Root {
  return parser.parse(text)
}

/**
 * A draft with blanks for its front matter, line for line, so that Markdown sees only the body and every offset
 * still counts from the top of the file. A byte order mark goes too: it would move them by one.
 */
export function withoutFacts(text: string, bodyStart: number): string {
  return text.slice(0, bodyStart).replace(/[^\r\n]/g, ' ') + text.slice(bodyStart)
}

/** Plain text without its indents, which Markdown would take for code; every offset stays as it is. */
export function withoutIndents(text: string): string {
  return text.replace(/^[ \t]+/gm, (indent) => '\u00a0'.repeat(indent.length))
}
