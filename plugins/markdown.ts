import type { Root } from 'mdast'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { addDraftSyntax } from './syntax.ts'

const parser = unified()
  .use(remarkParse)
  .use(remarkGfm)
  .use(remarkFrontmatter)
  .use(function draftSyntax() {
    addDraftSyntax(this.data())
  })
  .freeze()

/** A draft's text as a Markdown tree: CommonMark, GFM, placeholders and `:sizes` directives. */
export function parseMarkdown(text: string): Root {
  return parser.parse(text)
}
