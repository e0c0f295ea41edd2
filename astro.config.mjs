import { defineConfig } from 'astro/config'
import { sizewright } from './plugins/astro.ts'

export default defineConfig({
  outDir: './site',
  trailingSlash: 'always',
  compressHTML: true,
  // Print-outs are made on the other cores while pages are made on this one.
  build: { inlineStylesheets: 'never', concurrency: 8 },
  integrations: [sizewright()],
  devToolbar: { enabled: false },
})
