import { availableParallelism } from 'node:os'
import { resolve } from 'node:path'
import { Piscina } from 'piscina'
import type { Printed } from './index.ts'
import type { PrintJob } from './worker.ts'

let pool: Piscina<PrintJob, Printed> | undefined

/**
 * Makes a print-out on another core, while the pages are made on this one. The pool is opened when it is first
 * asked for. Its threads run the source as it is, so the file is named from the project's root, not from
 * wherever this module has been bundled to.
 */
export function printInBackground(job: PrintJob): Promise<Printed> {
  const threads = availableParallelism()
  // A thread that has read the typefaces is kept: the next pattern may be a moment away.
  pool ??= new Piscina({
    filename: resolve('src/print/worker.ts'),
    minThreads: threads,
    maxThreads: threads,
    idleTimeout: Number.POSITIVE_INFINITY,
    resourceLimits: { maxYoungGenerationSizeMb: 16, maxOldGenerationSizeMb: 256 },
  })
  return pool.run(job)
}
