import type { AstroIntegration } from 'astro'
import { draftMarkdown } from './draft-markdown.ts'
import { outcomes } from './outcomes.ts'

/**
 * The Astro integration: drafts are resolved as Markdown is rendered, and a build stops when one of them has errors,
 * after all have been read, so that no draft's findings hide another's. Preview goes on and shows them.
 */
export function sizewright(): AstroIntegration {
  return {
    name: 'sizewright',
    hooks: {
      'astro:config:setup': ({ updateConfig, injectRoute, command }) => {
        if (command === 'dev') {
          // A reader never sees the proof.
          injectRoute({
            pattern: '/patterns/[slug]/proof',
            entrypoint: new URL('../src/preview/proof.astro', import.meta.url),
          })
        }
        updateConfig({ markdown: { syntaxHighlight: false, processor: draftMarkdown() } })
      },
      'astro:build:start': () => {
        const faulty = [...outcomes].filter(([, { diagnostics }]) =>
          diagnostics.some(({ severity }) => severity === 'error'),
        )
        if (faulty.length === 0) return
        throw new Error(`These drafts have errors: ${faulty.map(([slug]) => slug).join(', ')}. Nothing was published.`)
      },
    },
  }
}
