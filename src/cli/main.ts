#!/usr/bin/env node
import module from 'node:module'

const usage = `sizewright: one crochet draft, every size, a web page and a PDF

  sizewright proof DRAFT… [--json | --html | --csv] [--watch] [--sizes "S, M, L"] [--terms uk]
                                     work every row for every size and say what is wrong;
                                     DRAFT is a file, or - for standard input; --html is a page
                                     for a checker, --csv for a spreadsheet, --json for scripts;
                                     --watch proofs again at every save; --sizes and --terms are for an old
                                     draft that does not say them itself
  sizewright build                   build the site, if no draft has errors
  sizewright preview                 show the site while you write, at http://localhost:4321
  sizewright new TITLE               start a draft in content/patterns
  sizewright counts DRAFT            the count of every row and size, as CSV
  sizewright work DRAFT ROW [--size NAME] [--piece NAME]
                                     one row as the hook works it, place by place
`

/** 0: no errors; 1: a draft has errors; 2: could not run. */
type Status = 0 | 1 | 2

/** Each with no more than it needs: a proof does not wait for what builds the site. */
const verbs: Readonly<Record<string, () => Promise<(args: readonly string[]) => Status | Promise<Status>>>> = {
  proof: async () => (await import('./proof.ts')).proof,
  build: async () => (await import('./build.ts')).build,
  preview: async () => (await import('./preview.ts')).preview,
  new: async () => (await import('./new.ts')).newDraft,
  counts: async () => (await import('./counts.ts')).counts,
  work: async () => (await import('./work.ts')).work,
}

// The program’s own modules are compiled once, not at every start; Node 20 has no such cache.
module.enableCompileCache?.()

const [verb = '', ...args] = process.argv.slice(2)
const asked = [verb, ...args].some((word) => word === '--help' || word === '-h') || verb === 'help'
const load = asked ? undefined : verbs[verb]
if (load === undefined) {
  process[asked ? 'stdout' : 'stderr'].write(
    asked || verb === '' ? usage : `There is no command “${verb}”.\n\n${usage}`,
  )
  process.exitCode = asked ? 0 : 2
} else {
  const run = await load()
  process.exitCode = await run(args)
}
