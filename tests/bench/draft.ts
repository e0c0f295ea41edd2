import rehypeStringify from 'rehype-stringify'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'
import { readDraft } from '../../plugins/read-draft.ts'
import { proofText } from '../../src/proof/text.ts'
import { generateDraft } from './generate.ts'

const remark = unified().use(remarkParse).use(remarkGfm).use(remarkRehype).use(rehypeStringify)

/** Reading, resolving and proofing a 60-row, 9-size draft, as a multiple of remark's parse and HTML of the same file. */
export function draftRatio(): { ratio: number; milliseconds: number; remark: number } {
  const text = generateDraft(1)
  const proof = median(() => {
    const { source, outcome } = readDraft('draft.md', 'draft', text)
    if (outcome.diagnostics.length > 0) throw new Error(JSON.stringify(outcome.diagnostics[0]))
    proofText({ source, pattern: outcome.value, diagnostics: outcome.diagnostics })
  })
  const plain = remarkTime(text)
  return { ratio: proof / plain, milliseconds: proof, remark: plain }
}

/** Milliseconds of remark's parse and HTML of a text. */
export function remarkTime(text: string): number {
  return median(() => String(remark.processSync(text)))
}

/** Milliseconds of the middle one of 41 runs, after ten to warm up. */
export function median(work: () => void): number {
  for (let run = 0; run < 10; run++) work()
  const times = Array.from({ length: 41 }, () => {
    const start = performance.now()
    work()
    return performance.now() - start
  })
  return times.sort((a, b) => a - b)[20] ?? 0
}
