import { dirname, resolve } from 'node:path'
import { watch } from 'chokidar'

/** Names for the folders of drafts as they are watched: a draft's body table lies beside it. */
function foldersOf(names: readonly string[]): string[] {
  return [...new Set(names.map((name) => dirname(resolve(name))))]
}

/** Runs `report` one at a time; what changes while it runs is reported again after it. */
function oneAtATime(report: (names: readonly string[]) => Promise<void>): (name: string) => void {
  const waiting = new Set<string>()
  let running = false
  const run = async (): Promise<void> => {
    running = true
    while (waiting.size > 0) {
      const names = [...waiting]
      waiting.clear()
      await report(names)
    }
    running = false
  }
  return (name) => {
    waiting.add(name)
    if (!running) void run()
  }
}

/** Milliseconds for which a file must stay as it is: some editors save a draft in several goes. */
const whole = { stabilityThreshold: 30, pollInterval: 10 }

/**
 * Calls `report` with the drafts that were saved, replaced, deleted or put back, until the watching is interrupted. A
 * table saved beside drafts concerns all drafts of its folder.
 */
export async function watchDrafts(
  names: readonly string[],
  report: (names: readonly string[]) => Promise<void>,
): Promise<void> {
  const changed = oneAtATime(report)
  const watcher = watch(foldersOf(names), { ignoreInitial: true, depth: 0, awaitWriteFinish: whole })
  watcher.on('all', (_, path) => {
    const own = names.filter((name) => resolve(name) === path)
    const beside = path.endsWith('.csv') ? names.filter((name) => dirname(resolve(name)) === dirname(path)) : []
    for (const name of own.length > 0 ? own : beside) changed(name)
  })
  await new Promise<void>((done) => process.once('SIGINT', done).once('SIGTERM', done))
  await watcher.close()
}
