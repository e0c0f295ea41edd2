import { countsCsv } from '../proof/counts.ts'
import { openDraft } from './draft-file.ts'

/** `sizewright counts DRAFT`: the count of every row for every size, as CSV. */
export async function counts([name, ...others]: readonly string[]): Promise<0 | 1 | 2> {
  if (name === undefined || others.length > 0) {
    process.stderr.write('Name one draft whose counts you want.\n')
    return 2
  }
  const opened = await openDraft(name)
  if (opened.kind === 'unopened') {
    process.stderr.write(`${name}: ${opened.unopened.problem}.\n`)
    return 2
  }
  const { value: pattern, diagnostics } = opened.draft.outcome
  const faulty = diagnostics.some((diagnostic) => diagnostic.severity === 'error')
  if (faulty) process.stderr.write(`${name} has errors; see them with: sizewright proof ${name}\n`)
  if (pattern !== null) process.stdout.write(countsCsv(pattern))
  return faulty ? 1 : 0
}
