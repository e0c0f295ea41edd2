import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { copyProject, emptySite } from '../site/project-copy.ts'

function writeDrafts(root: string, drafts: readonly string[]): void {
  for (const [index, draft] of drafts.entries()) {
    const folder = join(root, 'content/patterns', `panel-${String(index).padStart(3, '0')}`)
    mkdirSync(folder, { recursive: true })
    writeFileSync(join(folder, 'index.md'), draft)
  }
}

/** This project with other drafts. */
export function patternSite(drafts: readonly string[]): string {
  const root = copyProject('patterns', ['content/studio.yaml'])
  writeDrafts(root, drafts)
  return root
}

/** The same text in a site with Astro and unified alone: a collection, a page for each entry, no more. */
export function plainSite(drafts: readonly string[]): string {
  const root = emptySite('plain')
  writeDrafts(root, drafts)
  const files: Readonly<Record<string, string>> = {
    'astro.config.mjs': `import { unified } from '@astrojs/markdown-remark'
import { defineConfig } from 'astro/config'
export default defineConfig({ outDir: './site', markdown: { syntaxHighlight: false, processor: unified() } })
`,
    'src/content.config.ts': `import { defineCollection } from 'astro:content'
import { glob } from 'astro/loaders'
export const collections = { patterns: defineCollection({ loader: glob({ base: 'content/patterns', pattern: '*/index.md' }) }) }
`,
    'src/pages/[...slug].astro': `---
import { getCollection, render } from 'astro:content'
export async function getStaticPaths() {
  return (await getCollection('patterns')).map((entry) => ({ params: { slug: entry.id }, props: { entry } }))
}
const { Content } = await render(Astro.props.entry)
---
<html lang="en"><head><title>{Astro.props.entry.data.title}</title></head><body><Content /></body></html>
`,
  }
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(join(root, path, '..'), { recursive: true })
    writeFileSync(join(root, path), text)
  }
  return root
}
