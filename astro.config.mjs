import { unified } from '@astrojs/markdown-remark'
import { defineConfig } from 'astro/config'
import { remarkSizewright } from './plugins/remark-sizewright.ts'

export default defineConfig({
  outDir: './site',
  trailingSlash: 'always',
  compressHTML: true,
  build: { inlineStylesheets: 'never' },
  markdown: {
    syntaxHighlight: false,
    processor: unified({ remarkPlugins: [remarkSizewright] }),
  },
  devToolbar: { enabled: false },
})
