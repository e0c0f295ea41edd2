import type { Count } from '../count.ts'
import type { NumberWord, Word } from '../words.ts'
import { isNumber } from './found.ts'

interface Range {
  readonly from: NumberWord
  readonly to: NumberWord
}

function rangeAt(words: readonly Word[], at: number): Range | null {
  const from = words[at]
  const to = words[at + 2]
  const dash = /^(?:[-–]|to)$/.test(words[at + 1]?.text ?? '')
  return dash && isNumber(from) && isNumber(to) ? { from, to } : null
}

/** `4–45 (4–65, 4–70)`: a range of rows for each size, as one range that differs by size. */
export function rangesAt(
  words: readonly Word[],
  first: number,
  sizes: number,
): { readonly words: readonly Word[]; readonly end: number } | null {
  const start = rangeAt(words, first)
  if (start === null || sizes < 2 || !/^[([]$/.test(words[first + 3]?.text ?? '')) return null
  const ranges = [start]
  let at = first + 4
  for (; ranges.length < sizes; at += 4) {
    const next = rangeAt(words, at)
    if (next === null) return null
    ranges.push(next)
    if (ranges.length < sizes && !/^[,;]$/.test(words[at + 3]?.text ?? '')) return null
  }
  if (!/^[)\]]$/.test(words[at - 1]?.text ?? '')) return null
  const all = (which: 'from' | 'to'): Count => ranges.map((range) => range[which].count[0] ?? null)
  const dash = words[first + 1]
  return {
    words: [
      { ...start.from, count: all('from'), typed: false },
      ...(dash === undefined ? [] : [dash]),
      { ...start.to, count: all('to'), typed: false },
    ],
    end: at,
  }
}
