import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Dictionary } from '../terms/dictionary.ts'
import type { BaseStitch } from '../terms/stitch.ts'
import { heightInChains } from '../terms/stitch.ts'
import type { RowText } from './source.ts'
import { spanOf } from './source.ts'

/** What an opening chain is said to count as. */
interface Sum {
  readonly words: string
  readonly chains: number
  readonly base: BaseStitch
  readonly stitches: number
  /** Chains beside the stitch; 0 for none. */
  readonly beside: number
  readonly at: Diagnostic['at']
}

const said =
  /(?<![\w-])(?:ch(?:ain)?[ -]?(\d+)|(\d+)[ -]?ch(?:ain)?)\s*[([]?\s*(?:=|counts? as|counted as|counting as)\s+([^)\];.:]{2,60})/gi
const lead = /^(?:(?:the|a|an|one|first|beg|1st) )*(\d+)? ?/i
const chainBeside =
  /(?:and|,|\+|plus|&|with)\s*(?:a |an |one )?(?:(\d+)[ -]?ch(?:ain)?s?\b|ch(?:ain)?s?(?:[ -]?(\d+))?\b)/i

/** The stitch that words begin with, and what follows its name. */
function stitchNamed(
  words: string,
  dictionary: Dictionary,
): { readonly base: BaseStitch; readonly rest: string } | null {
  for (const name of [/^[a-z]+ [a-z]+/i, /^[a-z]+/i]) {
    const own = name.exec(words)?.[0] ?? ''
    const stitch = dictionary.stitches.get(own.toLowerCase())
    if (stitch !== undefined) return { base: stitch.base, rest: words.slice(own.length) }
  }
  return null
}

/** With the mark that closes the bracket opened in it. */
function withCloser({ 0: words, index, input }: RegExpExecArray): string {
  const next = input[index + words.length] ?? ''
  return /[([]/.test(words) && /[)\]]/.test(next) ? words + next : words
}

function sums(row: RowText, dictionary: Dictionary): readonly Sum[] {
  return [...row.text.matchAll(said)].flatMap((match) => {
    const clause = match[3] ?? ''
    const before = lead.exec(clause)
    const named = stitchNamed(clause.slice(before?.[0].length ?? 0), dictionary)
    const stitches = Number(before?.[1] ?? 1)
    // `ch 3 = 12 dc` is the count of the row.
    if (named === null || (stitches > 1 && /[^([\s]\s*=/.test(match[0]))) return []
    const { base } = named
    const beside = chainBeside.exec(named.rest)
    const chains = beside === null ? 0 : Number(beside[1] ?? beside[2] ?? 1)
    const made = Number(match[1] ?? match[2])
    const words = withCloser(match)
    const at = spanOf(row, { 0: words, index: match.index })
    return [{ words: words.trim(), chains: made, base, stitches, beside: chains, at }]
  })
}

/** Heights that the draft itself gives a stitch: `ch 2 (counts as dc)`. */
function ownHeights(all: readonly Sum[]): ReadonlySet<string> {
  return new Set(
    all.flatMap(({ base, chains, beside, stitches }) =>
      beside === 0 && stitches === 1 && chains < heightInChains[base] ? [`${base} ${chains}`] : [],
    ),
  )
}

/** `ch 4 (counts as dc and ch 2)`: what the chain counts as is not as long as the chain. */
export function chainSumFindings(rows: readonly RowText[], dictionary: Dictionary): readonly Diagnostic[] {
  const all = rows.flatMap((row) => sums(row, dictionary))
  const own = ownHeights(all)
  return all.flatMap((sum) => {
    const height = heightInChains[sum.base]
    const rest = sum.chains - sum.beside
    const fits =
      rest === height || own.has(`${sum.base} ${rest}`) || (sum.beside === 0 && (height < 3 || rest < height))
    if (fits && sum.stitches === 1) return []
    return [diagnose('chain-sum', sum.at, { words: sum.words, chains: sum.chains, needs: height + sum.beside })]
  })
}
