import { defineConfig } from 'astro/config'
import { sizewright } from './plugins/astro.ts'
import { withoutNode } from './plugins/for-browsers.ts'
import { offline } from './plugins/offline.ts'
import { siteAddressIn } from './plugins/site-address.ts'
import { webFonts } from './plugins/web-fonts.ts'

export default defineConfig({
  // Where the site stands, from the studio's own words.
  ...siteAddressIn('content/studio.yaml'),
  outDir: './site',
  trailingSlash: 'always',
  compressHTML: true,
  // Print-outs are made on the other cores while pages are made on this one.
  build: { inlineStylesheets: 'never', concurrency: 8 },
  // A page has no script of its own text: its security policy forbids it.
  vite: {
    build: { assetsInlineLimit: 0 },
    worker: { format: 'es', plugins: () => [withoutNode()] },
    // What workers of a page need: met later, they would make the preview load the page anew.
    optimizeDeps: { include: ['fflate', 'fontkit', 'fraction.js', 'pdfkit', 'qrcode-generator'] },
  },
  integrations: [sizewright(), webFonts(), offline()],
  devToolbar: { enabled: false },
})
