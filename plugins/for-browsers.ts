import type { Plugin } from 'vite'

/**
 * The solver's loader asks for a module of Node where it runs in Node. In a browser it never gets there, so the worker
 * that it is bundled into has an empty one.
 */
export function withoutNode(): Plugin {
  const empty = '\0without-node'
  return {
    name: 'without-node',
    enforce: 'pre',
    resolveId: (id) => (id === 'node:module' ? empty : null),
    load: (id) => (id === empty ? 'export const createRequire = () => null' : null),
  }
}
