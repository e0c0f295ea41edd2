import { parseArgs } from 'node:util'
import { followText } from '../proof/follow-text.ts'
import { indexesOf } from '../rows/find.ts'
import type { Ledger } from '../rows/ledger.ts'
import { dictionaryFor } from '../rows/terms/dictionary.ts'
import { openDraft } from './draft-file.ts'

interface Asked {
  readonly draft: string
  readonly row: string
  readonly size: string | null
  readonly piece: string | null
}

const how = 'Name a draft and a row: sizewright work DRAFT "Rnd 2" --size "Adult S"'

function asked(args: readonly string[]): Asked | string {
  try {
    const options = { size: { type: 'string' }, piece: { type: 'string' } } as const
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true })
    const [draft, row, ...others] = positionals
    if (draft === undefined || row === undefined || others.length > 0) return how
    return { draft, row, size: values.size ?? null, piece: values.piece ?? null }
  } catch (error) {
    return error instanceof Error ? error.message : how
  }
}

/** Positions of the sizes asked for: the one named, or all; null for a name that no size has. */
function sizesAsked(names: readonly string[], name: string | null): readonly number[] | null {
  if (name === null) return names.map((_, size) => size)
  const found = names.findIndex((each) => each.toLowerCase() === name.trim().toLowerCase())
  return found < 0 ? null : [found]
}

/** Labels that there are, for a row that there is not. */
function labelsIn(ledger: Ledger): string {
  const labels = [...new Set(ledger.rows.flatMap((row) => row.label ?? []))]
  return labels.length > 12 ? `${labels.slice(0, 12).join(', ')} …` : labels.join(', ')
}

function refuse(problem: string): 2 {
  process.stderr.write(`${problem}\n`)
  return 2
}

/** `sizewright work DRAFT ROW`: a row place by place, for one size or for every size. */
export async function work(args: readonly string[]): Promise<0 | 1 | 2> {
  const request = asked(args)
  if (typeof request === 'string') return refuse(request)
  const opened = await openDraft(request.draft)
  if (opened.kind === 'unopened') return refuse(`${request.draft}: ${opened.unopened.problem}.`)
  const { outcome, ledger } = opened.draft
  if (outcome.value === null || ledger === null)
    return refuse(`${request.draft} can’t be read; see why with: sizewright proof ${request.draft}`)
  const { sizes, terms } = outcome.value
  const wanted = sizesAsked(sizes, request.size)
  if (wanted === null) return refuse(`There is no size “${request.size}”; there are ${sizes.join(', ')}.`)
  const indexes = indexesOf(ledger, request.piece, request.row)
  if (indexes.length === 0) return refuse(`There is no row “${request.row}”; there are ${labelsIn(ledger)}.`)
  const dictionary = dictionaryFor(terms)
  const rows = indexes.flatMap((index) =>
    wanted.map((size) => followText({ ledger, index, size, sizeName: sizes[size] ?? '', dictionary })),
  )
  process.stdout.write(`${rows.join('\n\n')}\n`)
  return indexes.every((index) => ledger.rows[index]?.status === 'worked') ? 0 : 1
}
