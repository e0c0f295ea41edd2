import { createHash } from 'node:crypto'
import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'
import { build } from 'vite'

/** Name of the worker on the site; it stands at the top, for a worker has no say above its own folder. */
const fileName = 'service-worker.js'

/** The Astro integration that writes the service worker once the pages are made, so that opened patterns stay without a connection. */
export function offline(): AstroIntegration {
  return {
    name: 'sizewright-offline',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        // The worker keeps one page from the start; when that differs, so must the worker, for browsers to ask for it again.
        const shell = readFileSync(new URL('offline/index.html', dir))
        const version = createHash('sha256').update(shell).digest('hex').slice(0, 12)
        writeFileSync(new URL(fileName, dir), await workerScript(version))
      },
    },
  }
}

async function workerScript(shellVersion: string): Promise<string> {
  const built = await build({
    configFile: false,
    envDir: false,
    logLevel: 'warn',
    publicDir: false,
    define: { shellVersion: JSON.stringify(shellVersion) },
    build: {
      write: false,
      target: 'es2022',
      rollupOptions: {
        input: fileURLToPath(new URL('../src/offline/worker/main.ts', import.meta.url)),
        output: { format: 'iife', entryFileNames: fileName },
      },
    },
  })
  const outputs = 'output' in built ? built.output : []
  const [chunk] = outputs
  if (chunk?.type !== 'chunk') throw new Error('The service worker was not made.')
  return chunk.code
}
