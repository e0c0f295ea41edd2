import type { AstroUserConfig } from 'astro'
import rehypeStringify from 'rehype-stringify'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import remarkSmartypants from 'remark-smartypants'
import { unified } from 'unified'
import { VFile } from 'vfile'
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

function createRenderer() {
  const pipeline = unified()
    .use(remarkParse)
    .use(remarkGfm)
    .use(remarkSmartypants)
    .use(remarkSizewright)
    .use(remarkRehype)
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
