import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import { categoriesNamed, yarnCategoryName, yarnNames } from '../../grading/index.ts'
import { type Draft, textAt } from '../draft.ts'

/** Names that are everyday words as well, or sizes: they tell a yarn only beside `weight`, `yarn` or `category`. */
const everyday = new Set([
  'lace',
  'fine',
  'light',
  'medium',
  'baby',
  'sock',
  'craft',
  'rug',
  'afghan',
  'jumbo',
  'sport',
])
const trade = yarnNames.filter((name) => !everyday.has(name))
const choice = (names: readonly string[]): string => names.map((name) => name.replaceAll(' ', '[ -]')).join('|')

const all = choice(yarnNames)
const own = String.raw`(?:#|category\s*|cat\.\s*|weight\s*|CYC\s*)`

/** `Worsted (4)`, `worsted weight yarn [#4]`, `medium weight (4)`, `Medium (category 4)`, `bulky, #5` */
const nameFirst = new RegExp(
  String.raw`\b(?:(?<named>${choice(trade)})|(?<every>${all}))(?<said>[ -]weight)?(?<yarn>\s+yarn)?\s*,?\s*(?:[([]\s*(?<mark>${own})?(?<number>[0-7])\s*[)\]]|(?<bare>${own})(?<after>[0-7])(?![\d.]))`,
  'gi',
)
/** `#4 worsted`, `category 4 (medium)`, `4 - Medium` after `weight` */
const numberFirst = new RegExp(
  String.raw`(?<![\w.])${own}(?<number>[0-7])[)\]]?\s*[,:–-]?\s*[([]?\s*(?<name>${all})\b`,
  'gi',
)

interface Said {
  readonly words: string
  readonly index: number
  readonly name: string
  readonly number: number
}

function* saidIn(text: string): Generator<Said> {
  for (const { 0: words, index, groups = {} } of text.matchAll(nameFirst)) {
    const { named, every, said, yarn, mark, number, bare, after } = groups
    const told = named ?? ((said ?? yarn ?? mark ?? bare) === undefined ? undefined : every)
    if (told !== undefined) yield { words, index, name: told, number: Number(number ?? after) }
  }
  for (const { 0: words, index, groups = {} } of text.matchAll(numberFirst)) {
    yield { words, index, name: groups.name ?? '', number: Number(groups.number) }
  }
}

function finding({ words, name, number }: Omit<Said, 'index'>, start: number, end: number): Diagnostic[] {
  const categories = categoriesNamed(name)
  const ofNumber = yarnCategoryName(number)
  if (categories.length === 0 || categories.includes(number) || ofNumber === null) return []
  const details = { words: words.trim(), name, number, ofName: categories.join(' or '), ofNumber }
  return [diagnose('yarn-category-disagrees', { start, end }, details)]
}

/** Names of yarn categories that stand beside the number of another, among the facts and in the text. */
export function* categoryFindings(draft: Draft): Generator<Diagnostic> {
  yield* factFindings(draft)
  const text = draft.source.text.slice(draft.bodyStart)
  for (const said of saidIn(text)) {
    const start = draft.bodyStart + said.index
    yield* finding(said, start, start + said.words.length)
  }
}

/** A word of the trade among the fibres: worsted that is spun so is none. */
const inFibre = new RegExp(String.raw`\b(?:${choice(trade)})\b(?!-?\s?spun)`, 'i')

function* factFindings(draft: Draft): Generator<Diagnostic> {
  for (const [index, { category, fibre }] of draft.facts.facts.yarn.entries()) {
    if (typeof category === 'string') {
      const at = draft.facts.locate('yarn', index, 'category')
      const number = /[0-7]/.exec(category)?.[0]
      const name = yarnNames.find((each) => new RegExp(`\\b${choice([each])}\\b`, 'i').test(category))
      if (number !== undefined && name !== undefined)
        yield* finding({ words: textAt(draft, at), name, number: Number(number) }, at.start, at.end)
    }
    const name = fibre === undefined ? undefined : inFibre.exec(fibre)?.[0]
    if (typeof category !== 'number' || name === undefined) continue
    const at = draft.facts.locate('yarn', index, 'fibre')
    yield* finding({ words: `${textAt(draft, at)}, category ${category}`, name, number: category }, at.start, at.end)
  }
}
