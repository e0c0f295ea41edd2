import { readDraft } from '../../plugins/read-draft.ts'
import { offeredPrintOuts } from '../../src/layouts/print-outs.ts'
import { printInBackground } from '../../src/print/pool.ts'
import { generateDraft } from './generate.ts'

/** Makes every print-out of so many generated patterns on all cores, a few patterns at a time, and ends. */
const count = Number(process.argv[2] ?? 300)
const atOnce = 8

async function printAll(number: number): Promise<number> {
  const slug = `panel-${number}`
  const pattern = readDraft('index.md', slug, generateDraft(number)).outcome.value
  if (pattern === null) throw new Error(`${slug} can't be read`)
  const jobs = offeredPrintOuts(pattern, 'own').flatMap(({ printOuts }) =>
    printOuts.map(({ form, paper }) => {
      const page = { address: `https://studio.example/patterns/${slug}/`, code: true }
      return printInBackground({ pattern, options: { form, paper, page, studio: { name: 'Studio', address: null } } })
    }),
  )
  return (await Promise.all(jobs)).length
}

let next = 0
let made = 0
async function work(): Promise<void> {
  while (next < count) {
    const printOuts = await printAll(next++)
    made += printOuts
  }
}
await Promise.all(Array.from({ length: atOnce }, work))
console.log(`${made} print-outs`)
process.exit()
