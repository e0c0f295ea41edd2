import { rehypeHeadingIds, remarkCollectImages } from '@astrojs/markdown-remark'
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
 * again: a draft has none, and for pages of numbers that step costs more than all others together.
 */
export function draftMarkdown(): MarkdownProcessor {
  return { name: 'sizewright', options: {}, createRenderer: async ({ image }) => createRenderer(image) }
}

function createRenderer(image: Parameters<typeof remarkCollectImages>[0]) {
  const pipeline = unified()
    .use(remarkParse)
    .use(remarkGfm)
    .use(remarkSmartypants)
    .use(remarkSizewright)
    .use(remarkCollectImages, image)
    .use(remarkRehype)
    .use(rehypeFitImages)
    .use(rehypeHeadingIds)
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
      const { headings, localImagePaths, remoteImagePaths, frontmatter } = file.data.astro ?? {}
      return {
        code,
        metadata: {
          headings: headings ?? [],
          localImagePaths: localImagePaths ?? [],
          remoteImagePaths: remoteImagePaths ?? [],
          frontmatter: frontmatter ?? {},
        },
      }
    },
  }
}
