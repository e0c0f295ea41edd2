import { writeFileSync } from 'node:fs'
import { isMainThread } from 'node:worker_threads'

/** Loaded into a measured process: leaves the most memory it held in the file that the environment names. */
const report = process.env.USAGE_REPORT
if (isMainThread && report !== undefined) {
  process.on('exit', () => writeFileSync(report, JSON.stringify({ megabytes: process.resourceUsage().maxRSS / 1024 })))
}
