import { existsSync, readdirSync, renameSync, rmSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { build as buildSite } from 'astro'
import { type DraftOutcome, outcomes } from '../../plugins/outcomes.ts'
import type { Severity } from '../diagnostic/index.ts'
import { plural } from '../proof/report/lines.ts'
import { alignColumns, proofText } from '../proof/text.ts'
import { paintFor } from './paint.ts'

/** `sizewright build`: the site, or the findings that stop it; the site built last stays until a new one is whole. */
export async function build(): Promise<0 | 1 | 2> {
  const site = resolve('site')
  const fresh = resolve('site.new')
  rmSync(fresh, { recursive: true, force: true })
  try {
    await buildSite({ root: process.cwd(), outDir: fresh, logLevel: 'warn' })
  } catch (error) {
    rmSync(fresh, { recursive: true, force: true })
    return refuse(error)
  }
  rmSync(site, { recursive: true, force: true })
  renameSync(fresh, site)
  process.stdout.write(summary(site))
  return 0
}

function refuse(error: unknown): 1 | 2 {
  const faulty = [...outcomes.values()].filter((outcome) => countOf(outcome, 'error') > 0)
  for (const { source, pattern, diagnostics } of faulty) {
    const paint = paintFor(process.stderr)
    process.stderr.write(`${proofText({ source, pattern, diagnostics }, { paint, brief: true })}\n`)
  }
  const why = error instanceof Error ? error.message : String(error)
  process.stderr.write(`${why}\n${existsSync('site') ? 'The site built last is still in place.\n' : ''}`)
  return faulty.length > 0 ? 1 : 2
}

function countOf(outcome: DraftOutcome, severity: Severity): number {
  return outcome.diagnostics.filter((diagnostic) => diagnostic.severity === severity).length
}

function summary(site: string): string {
  const head = ['Pattern', 'Sizes', 'Rows worked', 'Unread', 'Findings', 'Pages', 'PDF files']
  const lines = [...outcomes].map(([slug, outcome]) => summaryLine(slug, outcome, site))
  return `${alignColumns([head, ...lines])}\n\n${plural(lines.length, 'pattern')} in ${site}\n`
}

function summaryLine(slug: string, outcome: DraftOutcome, site: string): string[] {
  const rows = outcome.pattern?.rows ?? []
  const files = readdirSync(join(site, 'patterns', slug))
  const withEnding = (ending: string) => files.filter((file) => file.endsWith(ending)).length
  return [
    outcome.pattern?.title ?? slug,
    String(outcome.pattern?.sizes.length ?? 0),
    String(rows.filter((row) => row.status === 'worked').length),
    String(rows.filter((row) => row.status !== 'worked').length),
    findings(outcome),
    String(withEnding('.html')),
    String(withEnding('.pdf')),
  ]
}

function findings(outcome: DraftOutcome): string {
  const counted = (['error', 'warning', 'note'] as const).flatMap((severity) => {
    const count = countOf(outcome, severity)
    return count === 0 ? [] : [plural(count, severity)]
  })
  return counted.length === 0 ? 'none' : counted.join(', ')
}
