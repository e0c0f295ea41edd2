import type { AstroUserConfig } from 'astro'
import type { Root } from 'mdast'
import type { State } from 'mdast-util-to-hast'
import rehypeStringify from 'rehype-stringify'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import remarkSmartypants from 'remark-smartypants'
import { unified } from 'unified'
import type { Node } from 'unist'
import { VFile } from 'vfile'
import { elementHandlers } from '../src/html/index.ts'
import { rehypeFitImages } from './rehype-fit-images.ts'
import { remarkSizewright } from './remark-sizewright.ts'

type MarkdownProcessor = NonNullable<NonNullable<AstroUserConfig['markdown']>['processor']>

/**
 * Astro's Markdown processor for a site of drafts: `markdown: { processor: draftMarkdown() }`. It does what
 * Astro's own `unified()` does with `remarkSizewright` among its plugins, without the step that parses raw HTML
 * again (a draft has none, and for pages of numbers that step costs more than all others together) and without
 * those that look for headings and pictures, which the pattern knows.
 */
export function draftMarkdown(): MarkdownProcessor {
  return { name: 'sizewright', options: {}, createRenderer: async () => createRenderer() }
}

/** The text of a pattern as one node, without `children` that a walk over the tree would find. */
interface FoldedBody extends Node {
  type: 'foldedBody'
  body: Root
}

declare module 'mdast' {
  interface RootContentMap {
    foldedBody: FoldedBody
  }
}

/** The step to HTML first walks the whole tree in search of link definitions; a pattern has none and is long. */
function foldBody() {
  return (tree: Root): void => {
    tree.children = [{ type: 'foldedBody', body: { type: 'root', children: tree.children } }]
  }
}

function foldedBody(state: State, { body }: FoldedBody): ReturnType<State['all']> {
  return state.all(body)
}

function createRenderer() {
  const pipeline = unified()
    .use(remarkParse)
    .use(remarkGfm)
    .use(remarkSmartypants)
    .use(remarkSizewright)
    .use(foldBody)
    .use(remarkRehype, { handlers: { foldedBody, ...elementHandlers } })
    .use(rehypeFitImages)
    .use(rehypeStringify)
    .freeze()
  return {
    render: async (content: string, given?: { fileURL?: URL; frontmatter?: Record<string, unknown> }) => {
      const file = new VFile({
        value: content,
        path: given?.fileURL,
        data: { astro: { frontmatter: given?.frontmatter ?? {} } },
      })
      const code = String(await pipeline.process(file))
      const { localImagePaths = [], frontmatter = {} } = file.data.astro ?? {}
      return { code, metadata: { headings: [], localImagePaths, remoteImagePaths: [], frontmatter } }
    },
  }
}
