import { rmSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { draftRatio } from './draft.ts'
import { generateDraft } from './generate.ts'
import { printFigures } from './print.ts'
import { runNode, type Usage } from './process.ts'
import { rowsRatio } from './rows.ts'
import { patternSite, plainSite } from './sites.ts'

/**
 * Measures what the README's figures say, each as a ratio of two things done in one run on one machine.
 * `npm run bench` needs a built site; the number of generated patterns may be given, 300 unless told.
 */
const project = resolve(import.meta.dirname, '../..')
const count = Number(process.argv[2] ?? 300)

const draft = draftRatio()
console.log(`One draft, 60 rows × 9 sizes: read, resolved and proofed in ${draft.milliseconds.toFixed(1)} ms;`)
console.log(`  remark's parse and HTML of the file ${draft.remark.toFixed(1)} ms: ratio ${draft.ratio.toFixed(2)}`)

const rows = rowsRatio()
console.log(`Rows alone, 200 × 12 sizes, ${rows.stitches} stitches: worked in ${rows.milliseconds.toFixed(1)} ms;`)
console.log(
  `  remark's parse and HTML of the file ${rows.remark.toFixed(1)} ms: ratio ${(rows.milliseconds / rows.remark).toFixed(2)}`,
)

for (const slug of ['causeway-cushion', 'slack-tide-cowl', 'sluice-gate-pullover']) {
  const figures = await printFigures(slug)
  console.log(`${slug}: PDF in ${figures.ours.toFixed(0)} ms, Chromium's print ${figures.chromium.toFixed(0)} ms:`)
  console.log(
    `  ${(figures.chromium / figures.ours).toFixed(1)} times faster; bytes ${(figures.bytes / figures.chromiumBytes).toFixed(2)} of Chromium's`,
  )
}

const few = runNode(['tests/bench/editions.ts', String(Math.ceil(count / 10))], project)
const many = runNode(['tests/bench/editions.ts', String(count)], project)
const rate = (many.seconds - few.seconds) / (0.9 * count * 6)
console.log(
  `All six print-outs of ${count} patterns on all cores: ${describe(many)}, ${(rate * 1000).toFixed(1)} ms for each more;`,
)
console.log(`  memory ${(many.megabytes / few.megabytes).toFixed(2)} times that of a tenth of them`)

const drafts = Array.from({ length: count }, (_, index) => generateDraft(index))
const plain = measured(plainSite(drafts), ['node_modules/astro/bin/astro.mjs', 'build'])
const whole = measured(patternSite(drafts), ['src/cli/main.ts', 'build'])
console.log(
  `${count} patterns, page and six PDFs each: ${describe(whole)}; plain Astro and unified: ${describe(plain)}`,
)
console.log(
  `  time ${(whole.seconds / plain.seconds).toFixed(2)} times, memory ${(whole.megabytes / plain.megabytes).toFixed(2)} times`,
)

function measured(root: string, [script = '', ...args]: readonly string[]): Usage {
  try {
    return runNode([script.startsWith('node_modules') ? join(project, script) : script, ...args], root)
  } finally {
    rmSync(root, { recursive: true, force: true })
  }
}

function describe({ seconds, megabytes }: Usage): string {
  return `${seconds.toFixed(1)} s, ${megabytes.toFixed(0)} MB`
}
