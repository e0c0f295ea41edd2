import { directiveFromMarkdown, directiveToMarkdown } from 'mdast-util-directive'
import { directive } from 'micromark-extension-directive'
import type { Data } from 'unified'
import { placeholderFromMarkdown } from './placeholder/from-markdown.ts'
import { placeholderSyntax } from './placeholder/syntax.ts'
import { placeholderToMarkdown } from './placeholder/to-markdown.ts'
import 'remark-parse'
import 'remark-stringify'

/** Teaches a unified processor the two things that a draft has beside Markdown: placeholders and `:sizes` directives. */
export function addDraftSyntax(data: Data): void {
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), placeholderSyntax(), directive()]
  data.fromMarkdownExtensions = [
    ...(data.fromMarkdownExtensions ?? []),
    placeholderFromMarkdown(),
    directiveFromMarkdown(),
  ]
  data.toMarkdownExtensions = [...(data.toMarkdownExtensions ?? []), placeholderToMarkdown(), directiveToMarkdown()]
}
