import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

export interface Usage {
  readonly seconds: number
  readonly megabytes: number
}

const reporter = pathToFileURL(join(import.meta.dirname, 'report-usage.ts')).href

/** Runs Node in a process of its own; its time from start to end, and the most memory it held. */
export function runNode(args: readonly string[], cwd: string): Usage {
  const report = join(mkdtempSync(join(tmpdir(), 'usage-')), 'usage.json')
  const start = performance.now()
  const { status, stderr, stdout } = spawnSync(process.execPath, ['--import', reporter, ...args], {
    cwd,
    encoding: 'utf8',
    env: { ...process.env, USAGE_REPORT: report, ASTRO_TELEMETRY_DISABLED: '1' },
  })
  const seconds = (performance.now() - start) / 1000
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}\n${stdout}\n${stderr}`)
  const { megabytes }: { megabytes: number } = JSON.parse(readFileSync(report, 'utf8'))
  return { seconds, megabytes }
}
