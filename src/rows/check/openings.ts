import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { ReadRow } from '../cut.ts'
import { rowName } from '../findings.ts'
import { labelText } from '../label.ts'
import { wordsOf } from '../row-words.ts'
import type { Step, StepOf } from '../step.ts'
import { heightInChains } from '../terms/stitch.ts'

/** A row that opens with a chain in place of, or beside, its first stitch. */
interface Opened {
  readonly row: ReadRow
  readonly chain: StepOf<'chain'>
  readonly chains: number
}

const before = new Set<Step['kind']>(['remark', 'turn', 'slip', 'join'])

/** The opening chain of a row that goes into the row below; null where it is something else. */
function openingOf(row: ReadRow): StepOf<'chain'> | null {
  if (row.content?.kind !== 'steps' || row.opensSection) return null
  const { steps } = row.content
  const at = steps.findIndex((step) => !before.has(step.kind))
  const [chain, next] = [steps[at], steps.slice(at + 1).find((step) => !before.has(step.kind))]
  if (chain?.kind !== 'chain' || next?.kind !== 'work' || next.where.kind === 'ring' || next.where.kind === 'fromHook')
    return null
  return chain
}

/** Chains that may stand for a stitch and a space beside it. */
function leadsOn(row: ReadRow, chains: number, height: number): boolean {
  return chains > height && row.words.some(({ text }) => /^(?:sk|skip|miss|sp|sps|loop|lp)$/.test(text))
}

/** Rows of one piece whose first stitch is the same, with their opening chains; by piece and stitch. */
function openedAlike(rows: readonly ReadRow[]): readonly (readonly Opened[])[] {
  const found = new Map<string, Opened[]>()
  let piece = 0
  for (const row of rows) {
    if (row.opensSection) piece += 1
    const chain = openingOf(row)
    const base = row.content?.kind === 'steps' ? wordsOf(row.content.steps).stitch?.base : undefined
    const chains = chain?.count[0] ?? null
    if (chain === null || base === undefined || chains === null || leadsOn(row, chains, heightInChains[base])) continue
    const key = `${piece} ${base}`
    found.set(key, [...(found.get(key) ?? []), { row, chain, chains }])
  }
  return [...found.values()]
}

const leastFellows = 3

/** One row that opens with another chain than all the others of its stitch. */
function oddOne(rows: readonly Opened[]): { readonly odd: Opened; readonly others: number } | null {
  const [first] = rows
  if (first === undefined || rows.length <= leastFellows) return null
  const others =
    rows.filter((each) => each.chains === rows[1]?.chains).length > 1 ? (rows[1]?.chains ?? 0) : first.chains
  const [odd, ...more] = rows.filter((each) => each.chains !== others)
  return odd === undefined || more.length > 0 ? null : { odd, others }
}

export function openingFindings(rows: readonly ReadRow[]): readonly Diagnostic[] {
  return openedAlike(rows).flatMap((alike) => {
    const found = oddOne(alike)
    if (found === null) return []
    const { odd, others } = found
    const { label } = odd.row
    const numbers = label?.numbers.kind === 'list' ? (label.numbers.items[0] ?? null) : null
    const row = rowName(label === null ? null : labelText(label, numbers))
    return [diagnose('opening-unlike', odd.chain.at, { row, chains: odd.chains, others })]
  })
}
