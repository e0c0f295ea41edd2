import { everySize } from '../count.ts'
import { isPlaceless, partsOf } from '../phrase/parts.ts'
import { anyStitch } from '../phrase/target.ts'
import { readSteps } from '../read.ts'
import type { Vocabulary } from '../reader.ts'
import { foldSizeLists } from '../sizelist.ts'
import type { Part, Special, Step, Where } from '../step.ts'
import type { Dictionary } from '../terms/dictionary.ts'
import type { Stitch } from '../terms/stitch.ts'
import { heightInChains, plain } from '../terms/stitch.ts'
import { readWords } from '../words.ts'
import type { Hole } from '../written.ts'
import type { Definition } from './definition.ts'
import { closesAsOne } from './known.ts'
import { placesOfMotions, tellsMotions } from './motions.ts'

const placeNouns =
  '(?:sts?|stitch(?:es)?|ch(?:ain)?s?|(?:ch-?\\d* ?)?(?:sp|sps|space|lp|loop)|place|corner|ring|[hd]?t?[sdt]?[cr])'
/** The place that a definition leaves to the rows: `in st or sp indicated`, `all in the same stitch`. */
const openPlace = new RegExp(
  `(?:,? ?\\b(?:all )?(?:worked |made )?(?:in|into|to|over)(?: to)?(?: the| a| an| one| same| single| next| indicated| specified| designated| given| chosen)* ${placeNouns}(?:(?: or | and/or |/)(?:the |next |a )?${placeNouns})?(?: (?:indicated|specified|designated|given|stated|called for|as directed|as indicated))?)(?=\\s*(?:[.;]|$))`,
  'i',
)
const certain = /indicated|specified|designated|given|stated|called for|directed| or |\bone\b|\bsame\b|\ba\b|\//i

/** The meaning without a place that it leaves to the rows; blanks keep every offset. */
function withoutOpenPlace(text: string): string {
  return text.replace(openPlace, (match) => (certain.test(match) ? ' '.repeat(match.length) : match))
}

/** `(counts as dc)` after a chain speaks of the chain alone. */
function ofChain(text: string): string {
  return text.replace(/(\bch(?:ain)?[ -]?\d+|\b\d+ ?ch(?:ain)?)\s*[([][^)\]]*count[^)\]]*[)\]]/gi, '$1')
}

const asOne = /\bcounts? as (?:1|one|a|a single) (?:st|stitch)\b|\(1 (?:st|stitch) made\)/i

/** A definition is read before any row can tell between two readings. Brackets alone part nothing. */
function likelier(step: Step): readonly Step[] {
  if (step.kind === 'sequence') return step.body.flatMap(likelier)
  return step.kind === 'either' ? (step.options[0] ?? []).flatMap(likelier) : [step]
}

function firstStitch(parts: readonly Part[]): Stitch | null {
  for (const part of parts) if (part.kind === 'stitch' || part.kind === 'together') return part.stitch
  return null
}

const opensRow = /^(?:beg|begin|beginning|start|starting|opening|initial|first)\b/i

/** `Ch 3, 4 dc in same st` for the beginning of a row: the chain stands for the first stitch, or for the first leg of a cluster. */
function withOpening(parts: readonly Part[], name: string, sizes: number): readonly Part[] {
  const [chain, ...rest] = parts
  if (chain?.kind !== 'chain' || !(opensRow.test(name) || rest.every((part) => part.kind === 'together'))) return parts
  if (rest.some((part) => part.kind === 'together') && rest.length === 1) return rest
  const stitch = firstStitch(rest)
  const chains = chain.count[0] ?? 0
  if (stitch === null || chains < 1) return parts
  const spare = chains - heightInChains[stitch.base]
  const first: Part = { kind: 'stitch', stitch: plain(stitch.base), count: everySize(1, sizes) }
  return spare > 0 && chains > 3
    ? [first, { kind: 'chain', count: everySize(spare, sizes) }, ...rest]
    : [first, ...rest]
}

/** `Ch 3, sl st in first ch`: whatever chain or stitch it is closed in. */
function isPicot(name: string, meaning: string): boolean {
  const closes =
    /^\W*(?:work |make )?(?:ch(?:ain)?\s?-?\d+|\d+\s?ch(?:ain)?)\W+(?:sl\b|slip|ss\b|join|(?:1 )?(?:sc|dc)\b)[^,;.]*[.)]*$/i
  return closes.test(meaning) && (/picot/i.test(name) || /\b(?:sl|slip|ss)\b/i.test(meaning))
}

function isOnePlace(where: Where): boolean {
  if (where.kind === 'next' || where.kind === 'first') return where.count.every((count) => count === 1)
  return where.kind === 'same' || where.kind === 'ring'
}

/** @param open the rows say where it goes */
function makesOf(steps: readonly Step[], name: string, sizes: number, open: boolean): Special['makes'] {
  const working = steps.filter((step) => step.kind !== 'remark').flatMap(likelier)
  const [only, ...others] = working
  // `sc2tog` by itself goes over two stitches.
  if (only?.kind === 'together' && others.length === 0 && !open) return { steps: working }
  if (only?.kind === 'work' && others.length === 0 && !isPlaceless(only.where)) {
    if (isOnePlace(only.where))
      return partsOf([{ ...only, where: { kind: 'same', start: false } }]) ?? { steps: working }
  }
  const parts = partsOf(working)
  return parts === null ? { steps: working } : withOpening(parts, name, sizes)
}

/** Whether a name is a stitch's or a decrease's that every row knows. */
export function isCommon(name: string, { stitches }: Dictionary): boolean {
  const own = name.toLowerCase()
  const base = /^(\p{L}+)\d+tog$/u.exec(own)?.[1]
  return (
    stitches.has(own) ||
    (base !== undefined && stitches.has(base)) ||
    /^(?:inv(?:isible)?[ -]?)?(?:inc|dec)(?:rease)?s?$/.test(own)
  )
}

/** What words mean that name a plain stitch, an increase or a decrease; null for any others. */
export function commonMeaning(meaning: string, vocabulary: Vocabulary, at: Definition['at']): Special['makes'] | null {
  const { dictionary, sizes } = vocabulary
  const words = meaning
    .toLowerCase()
    .replace(/\(.*|[.;,].*$/g, '')
    .trim()
  const stitch = dictionary.stitches.get(words)
  const one = (count: number, each: Stitch): Special['makes'] => [
    { kind: 'stitch', stitch: each, count: everySize(count, sizes) },
  ]
  if (stitch !== undefined && stitch.base !== 'slipStitch') return one(1, stitch)
  const named = words.split(' ').map((word) => dictionary.stitches.get(word))
  const own = named.find((each) => each !== undefined) ?? plain('singleCrochet')
  if (/^(?:\w+ )?inc(?:rease)?$/.test(words)) return one(2, own)
  return /^(?:\w+ )?dec(?:rease)?$/.test(words) ? closedOver(2, words, vocabulary, at) : null
}

function closedOver(
  places: number,
  name: string,
  { dictionary, sizes }: Vocabulary,
  at: Definition['at'],
): Special['makes'] {
  const named = name
    .toLowerCase()
    .split(/[ \d-]/)
    .map((word) => dictionary.stitches.get(word))
  const stitch = named.find((each) => each !== undefined) ?? plain('singleCrochet')
  const where = { kind: 'next', count: everySize(places, sizes), of: anyStitch } as const
  return { steps: [{ kind: 'together', stitch, name: null, legs: everySize(places, sizes), where, at }] }
}

function stepsIn(
  { meaningAt }: Definition,
  text: string,
  holes: readonly Hole[],
  vocabulary: Vocabulary,
): readonly Step[] | null {
  const words = readWords({ at: meaningAt, text, holes }, vocabulary.sizes)
  const source = ({ start, end }: Definition['at']): string =>
    text.slice(start - meaningAt.start, end - meaningAt.start)
  const { steps } = readSteps(foldSizeLists(words, vocabulary.sizes, source).words, vocabulary, null)
  return steps === null || steps.every((step) => step.kind === 'remark') ? null : steps
}

/**
 * What a definition means; null for a stitch that every row knows, 'unread' where the words do not tell.
 *
 * @param text the meaning's own characters
 */
export function meaningOf(
  definition: Definition,
  text: string,
  holes: readonly Hole[],
  vocabulary: Vocabulary,
): Special | 'unread' | null {
  const { name, also, meaning, at } = definition
  if ([name, ...also].some((each) => isCommon(each, vocabulary.dictionary))) return null
  const entry = (makes: Special['makes']): Special => ({ name, also, makes, at, meaning })
  if (asOne.test(ofChain(meaning))) return entry('one stitch')
  if (isPicot(name, meaning)) return entry([{ kind: 'picot' }])
  if (tellsMotions(meaning)) {
    const places = closesAsOne(name) ? 1 : placesOfMotions(meaning)
    return entry(places === 1 ? 'one stitch' : closedOver(places, name, vocabulary, at))
  }
  const placed = stepsIn(definition, text, holes, vocabulary)
  const steps = placed ?? stepsIn(definition, withoutOpenPlace(text), holes, vocabulary)
  if (steps !== null) return entry(makesOf(steps, name, vocabulary.sizes, placed === null))
  return [name, ...also].some(closesAsOne) ? entry('one stitch') : 'unread'
}
