import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { ReadRow } from '../cut.ts'
import { rowName } from '../findings.ts'
import { labelText } from '../label.ts'
import { wordsOf } from '../row-words.ts'
import type { Step } from '../step.ts'
import type { RowText } from './source.ts'
import { spanOf } from './source.ts'

const named =
  /(?<!\w)(?:top|\d+(?:st|nd|rd|th) ch(?:ain)?) of (?:the )?(?:(?:beg|beginning|turning|starting|initial|skipped|t)[ -]*)?(?:ch(?:ain)?[ -]?(\d+)|(\d+)[ -]?ch(?:ain)?\b)/gi

/** Lengths of the chains that steps open with, or bring for the row after them. */
function openings(steps: readonly Step[]): readonly number[] {
  const found: number[] = []
  const { pending } = wordsOf(steps)
  if (pending !== null) found.push(pending.count[0] ?? 0)
  for (const step of steps) {
    if (step.kind === 'chain') found.push(step.count[0] ?? 0)
    if (step.kind === 'repeat' || step.kind === 'sequence') return [...found, ...openings(step.body)]
    if (step.kind === 'either') return [...found, ...step.options.flatMap(openings)]
    if (step.kind !== 'work') continue
    const nth = step.where.kind === 'fromHook' ? (step.where.nth[0] ?? 0) : 0
    if (nth > 0) found.push(nth - 1, nth)
    const [first] = step.parts
    if (first?.kind === 'chain') found.push(first.count[0] ?? 0)
    return found
  }
  return found
}

/** The chain at the end of a row that opens the next; null where it brings none. */
function broughtBy({ content }: ReadRow): number | null {
  return content?.kind === 'steps' ? (wordsOf(content.steps).pending?.count[0] ?? null) : null
}

/** What opens a row; null where that is not known. */
function openingsOf({ content }: ReadRow): readonly number[] | 'as before' | null {
  if (content === null || content.kind === 'bySize' || content.kind === 'schedule') return null
  return content.kind === 'steps' ? openings(content.steps) : 'as before'
}

/** `sl st to top of ch-2` where no chain of two opens this row or the one below. */
export function topFindings(rows: readonly ReadRow[], textOf: (row: ReadRow) => RowText): readonly Diagnostic[] {
  const found: Diagnostic[] = []
  let all = new Set<number>()
  let below: ReadonlySet<number> | null = all
  let brought: number | null = null
  for (const row of rows) {
    if (row.opensSection) all = new Set()
    const opened = openingsOf(row)
    const begins = brought === null || row.opensSection ? [] : [brought]
    const own: ReadonlySet<number> | null =
      opened === null ? null : new Set([...(opened === 'as before' ? all : opened), ...begins])
    brought = broughtBy(row)
    for (const chains of own ?? []) all.add(chains)
    if (own !== null && below !== null) found.push(...namedBeside(row, textOf(row), own, below))
    below = own
  }
  return found
}

/** A round is joined to the chain that it has itself begun with, where it has one. */
const joins = /\b(?:join(?:ed|ing)?|sl(?:ip)? ?sts?|ss)\b[^,;.]{0,30}$/i

function namedBeside(
  row: ReadRow,
  text: RowText,
  own: ReadonlySet<number>,
  below: ReadonlySet<number>,
): readonly Diagnostic[] {
  const name = rowName(row.label === null ? null : labelText(row.label, firstNumber(row)))
  const begins = [...own].some((chains) => chains > 1)
  return [...text.text.matchAll(named)].flatMap((match) => {
    const chains = Number(match[1] ?? match[2])
    const joined = begins && joins.test(text.text.slice(0, match.index))
    const there = joined ? own : new Set([...own, ...below])
    if (there.size === 0 || there.has(chains)) return []
    const made = [...there].filter((length) => length > 1).sort((first, second) => first - second)
    return [diagnose('chain-named', spanOf(text, match), { row: name, words: match[0], chains, made })]
  })
}

function firstNumber({ label }: ReadRow): readonly (number | null)[] | null {
  return label?.numbers.kind === 'list' ? (label.numbers.items[0] ?? null) : null
}
