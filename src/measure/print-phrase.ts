import { agree, always, columns, notForThisSize } from './columns.ts'
import type { Segment } from './segment.ts'
import type { PerSize } from './value.ts'

/**
 * What may differ from size to size within one wording, the longer form first: `every 4th row` or `every row`,
 * `once` or `6 times`, `next 4 sts` or `next st`, `1 st` or `3 sts`, a bare number.
 */
const field =
  /\bevery (?:\d+(?:st|nd|rd|th) )?(?:row|rnd)\b|\b(?:once|twice|\d+ times)\b|\bnext (?:\d+ )?sts?\b|\b\d+ (?:st|row|rnd)s?\b|\d+/g

/** A wording, and what stands in its fields. */
interface Cut {
  readonly fixed: readonly string[]
  readonly fields: readonly string[]
}

/**
 * Words written for each size by the same rule. Where sizes share the wording it is printed once, with the sizes in
 * columns; where they do not, all sizes stand below each other, each on a line of its own:
 *
 *     dec 1 st at each end of every 4th (4th, 6th) row 6 (7, 5) times
 *
 *     Size Child: increase 7 evenly over 93;
 *     Size Adult S: work even over 104
 */
export function printPhrase(texts: PerSize<string | null>, names: readonly string[]): readonly Segment[] {
  const shown = texts.map((text) => text ?? notForThisSize)
  if (agree(shown)) return [always(shown[0] ?? '')]
  return inColumns(texts) ?? inLines(shown, names)
}

function inLines(texts: PerSize<string>, names: readonly string[]): readonly Segment[] {
  const last = texts.length - 1
  return texts.flatMap((text, size) => [
    { text: `\n${names.length === 0 ? '' : `Size ${names[size] ?? ''}: `}`, show: 'columns' },
    { text, show: size },
    ...(size === last ? [] : [{ text: ';', show: 'columns' } as const]),
  ])
}

function inColumns(texts: PerSize<string | null>): readonly Segment[] | null {
  const cuts = texts.flatMap((text) => (text === null ? [] : [cut(text)]))
  const [first] = cuts
  const wording = first?.fixed.join('#')
  if (first === undefined || cuts.length < texts.length) return null
  if (cuts.some(({ fixed }) => fixed.join('#') !== wording)) return null
  const segments = first.fixed.flatMap((text, index) => [
    always(text),
    ...(index < first.fields.length ? sideBySide(cuts.map(({ fields }) => fields[index] ?? '')) : []),
  ])
  return joined(segments)
}

function cut(text: string): Cut {
  return { fixed: text.split(field), fields: text.match(field) ?? [] }
}

/** `6 times`, `7 times` is `6 (7) times`; words in other numbers stand whole: `once (7 times)`. */
function sideBySide(cells: PerSize<string>): readonly Segment[] {
  if (agree(cells)) return [always(cells[0] ?? '')]
  const words = cells.map((cell) => cell.split(' '))
  if (words.some((own) => own.length !== words[0]?.length)) return columns(cells)
  const before = alike(words)
  const rest = words.map((own) => own.slice(before))
  const after = alike(rest.map((own) => own.toReversed()))
  const middle = rest.map((own) => own.slice(0, own.length - after).join(' '))
  const [first = []] = words
  const lead = first.slice(0, before).map((word) => `${word} `)
  const trail = first.slice(first.length - after).map((word) => ` ${word}`)
  return [always(lead.join('')), ...columns(middle), always(trail.join(''))]
}

/** How many words all begin with, one at least left over. */
function alike(words: readonly (readonly string[])[]): number {
  const shortest = Math.min(...words.map((own) => own.length))
  let count = 0
  while (count < shortest - 1 && words.every((own) => own[count] === words[0]?.[count])) count += 1
  return count
}

function joined(segments: readonly Segment[]): readonly Segment[] {
  const found: Segment[] = []
  for (const segment of segments) {
    const last = found.at(-1)
    if (segment.show === 'always' && last?.show === 'always') {
      found[found.length - 1] = always(last.text + segment.text)
    } else if (segment.text !== '') found.push(segment)
  }
  return found
}
