import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // A browser or a PDF reader may be slow to start on a small machine; nothing is measured here.
    testTimeout: 60_000,
    hookTimeout: 120_000,
    pool: 'threads',
  },
})
