import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ShapingName } from '../../src/formula/index.ts'
import { shape } from '../../src/grading/shaping/shape.ts'
import { intervals } from '../../src/grading/shaping/spread.ts'
import { printPhrase, shareOf, textForAll, textForSize } from '../../src/measure/index.ts'
import { work } from '../rows/draft.ts'

const seed = { seed: 20260314 }

/** What is asked for one size; null where the phrase does not apply to it. */
interface Asked {
  readonly counts: readonly number[]
  readonly words: readonly string[]
}

function phraseFor(name: ShapingName, asked: Asked): string {
  const { words, problem } = shape(name, asked.counts, asked.words)
  if (problem !== null) throw new Error(`${name}(${asked.counts}) is refused: ${JSON.stringify(problem)}`)
  return words
}

const among = (least: number, most: number) => fc.integer({ min: least, max: most })

/** One to four sizes, at times one to which the phrase does not apply. */
function sizesOf(asked: fc.Arbitrary<Asked>): fc.Arbitrary<readonly (Asked | null)[]> {
  return fc
    .tuple(asked, fc.array(fc.option(asked, { freq: 8 }), { maxLength: 3 }))
    .map(([first, others]) => [first, ...others])
}

/**
 * The counts that the row reader comes to, a list of rows for each size, from a fabric of as many stitches as each size
 * begins with. Any finding fails the law.
 */
function worked(
  sizes: readonly (Asked | null)[],
  name: ShapingName,
  from: (asked: Asked) => number,
  rows: (asked: Asked) => number,
) {
  const begins = sizes.map((asked) => (asked === null ? 12 : from(asked)))
  const last = sizes.map((asked) => (asked === null ? 1 : rows(asked) + 1))
  const draft = work(
    '## A\nFoundation: Ch {{chains}}.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRows 2–{{last}}: {{phrase}}.',
    {
      sizes: sizes.map((_, size) => `Size ${size}`),
      holes: {
        chains: { kind: 'number', bySize: begins.map((count) => count + 1) },
        last: { kind: 'number', bySize: last },
        phrase: { kind: 'text', bySize: sizes.map((asked) => (asked === null ? null : phraseFor(name, asked))) },
      },
    },
  )
  expect(draft.found.map(({ message }) => message)).toEqual([])
  const shaped = draft.ledger.rows.slice(2)
  return sizes.map((_, size) => shaped.flatMap(({ total }) => total[size] ?? []))
}

/** Rows, counted from 1, in which the count changes, and by how much. */
function changesOf(from: number, counts: readonly number[]) {
  return counts.flatMap((count, row) => {
    const by = count - (counts[row - 1] ?? from)
    return by === 0 ? [] : [{ row: row + 1, by }]
  })
}

const spanOf = (numbers: readonly number[]) => Math.max(...numbers) - Math.min(...numbers)

const manner = fc.subarray(['one end', 'rounds', 'either side'])

/** From one count to another with room for it: as many shaped rows as rows at most. */
const tapered: fc.Arbitrary<Asked> = manner.chain((words) => {
  const atOnce = words.includes('one end') ? 1 : 2
  return fc.tuple(among(1, 60), fc.boolean(), among(0, 40), among(atOnce, 60)).map(([rows, rises, shaped, least]) => {
    const most = least + atOnce * Math.min(shaped, rows)
    return { counts: rises ? [least, most, rows] : [most, least, rows], words }
  })
})

const at = ({ counts }: Asked, index: number): number => counts[index] ?? 0

describe('a taper', () => {
  it('ends on its last count in its last row, by changes that are alike and evenly apart', () => {
    fc.assert(
      fc.property(sizesOf(tapered), (sizes) => {
        const found = worked(
          sizes,
          'taper',
          (asked) => at(asked, 0),
          (asked) => at(asked, 2),
        )
        for (const [size, asked] of sizes.entries()) {
          const counts = found[size] ?? []
          if (asked === null) {
            expect(counts).toEqual([])
            continue
          }
          const [from, to, rows] = [at(asked, 0), at(asked, 1), at(asked, 2)]
          const changes = changesOf(from, counts)
          const gaps = changes.map(({ row }, index) => row - (changes[index - 1]?.row ?? 0))
          const keepsSide = !asked.words.includes('rounds') && !asked.words.includes('either side')
          const paired = keepsSide && 2 * changes.length <= rows
          expect(counts).toHaveLength(rows)
          expect(counts.at(-1)).toBe(to)
          expect(
            changes.every(({ by }) => by === Math.sign(to - from) * (asked.words.includes('one end') ? 1 : 2)),
          ).toBe(true)
          if (changes.length === 0) continue
          expect(spanOf(gaps)).toBeLessThanOrEqual(paired ? 2 : 1)
          expect(rows - (changes.at(-1)?.row ?? 0)).toBeLessThanOrEqual(paired ? 1 : 0)
          if (paired) expect(gaps.filter((gap) => gap % 2 !== 0)).toEqual([])
        }
      }),
      { numRuns: 1500, ...seed },
    )
  })
})

describe('a waist', () => {
  const waisted: fc.Arbitrary<Asked> = fc
    .record({
      rows: among(4, 60),
      narrow: among(2, 40),
      words: fc.subarray(['rounds', 'either side']),
      down: among(0, 20),
      up: among(0, 20),
    })
    .map(({ rows, narrow, words, down, up }) => {
      const room = 2 * Math.floor(rows / 4)
      return { counts: [narrow + 2 * Math.min(down, room), narrow, narrow + 2 * Math.min(up, room), rows], words }
    })

  it('falls to its narrowest by the middle and rises to its last count in its last row', () => {
    fc.assert(
      fc.property(sizesOf(waisted), (sizes) => {
        const found = worked(
          sizes,
          'waist_taper',
          (asked) => at(asked, 0),
          (asked) => at(asked, 3),
        )
        for (const [size, asked] of sizes.entries()) {
          const counts = found[size] ?? []
          if (asked === null) continue
          const narrowest = counts.indexOf(at(asked, 1))
          const [down, up] = [counts.slice(0, narrowest), counts.slice(narrowest)]
          expect(counts).toHaveLength(at(asked, 3))
          expect(Math.min(...counts)).toBe(at(asked, 1))
          expect(counts.at(-1)).toBe(at(asked, 2))
          expect(narrowest).toBeLessThan(counts.length / 2)
          expect(changesOf(at(asked, 0), counts).find(({ by }) => by > 0)?.row ?? counts.length).toBeGreaterThanOrEqual(
            counts.length / 2 - 1,
          )
          expect(down).toEqual(down.toSorted((a, b) => b - a))
          expect(up).toEqual(up.toSorted((a, b) => a - b))
        }
      }),
      { numRuns: 600, ...seed },
    )
  })
})

describe('steps along an edge', () => {
  const stepped = fc
    .record({ stitches: among(1, 40), rows: among(1, 20) })
    .map(({ stitches, rows }): Asked => ({ counts: [stitches, rows], words: [] }))
  const equal = fc
    .record({ rows: among(1, 12), more: among(0, 60) })
    .map(({ rows, more }): Asked => ({ counts: [rows + more, rows], words: [] }))

  it.each([
    ['armhole_steps', 2, stepped],
    ['neck_steps', 1, stepped],
    ['shoulder_steps', 1, equal],
  ] as const)(
    '%s takes off all its stitches, none of its steps larger than the one before',
    (name, ends, arbitrary) => {
      fc.assert(
        fc.property(sizesOf(arbitrary), (sizes) => {
          const found = worked(
            sizes,
            name,
            (asked) => 3 * ends * at(asked, 0),
            (asked) => at(asked, 1),
          )
          for (const [size, asked] of sizes.entries()) {
            const counts = found[size] ?? []
            if (asked === null) continue
            const [stitches, rows] = [at(asked, 0), at(asked, 1)]
            const steps = changesOf(3 * ends * stitches, counts)
            const taken = steps.map(({ by }) => -by)
            expect(counts).toHaveLength(rows)
            expect(counts.at(-1)).toBe(2 * ends * stitches)
            expect(steps.map(({ row }) => row)).toEqual(steps.map((_, index) => index + 1))
            expect(taken).toEqual(taken.toSorted((a, b) => b - a))
            expect(taken).toHaveLength(Math.min(stitches, rows))
            if (name === 'shoulder_steps') expect(spanOf(taken)).toBeLessThanOrEqual(1)
          }
        }),
        { numRuns: 500, ...seed },
      )
    },
  )
})

describe('a yoke', () => {
  const widened: fc.Arbitrary<Asked> = fc
    .record({ from: among(20, 80), rounds: among(1, 40), times: among(1, 6), each: among(1, 20), more: among(0, 5) })
    .map(({ from, rounds, times, each, more }) => {
      const often = Math.min(times, rounds)
      return { counts: [from, from + often * each + Math.min(more, often), rounds, often], words: [] }
    })

  it('widens in as many rounds as asked, spaced and shared fairly, the last of them its last', () => {
    fc.assert(
      fc.property(sizesOf(widened), (sizes) => {
        const found = worked(
          sizes,
          'yoke_rounds',
          (asked) => at(asked, 0),
          (asked) => at(asked, 2),
        )
        for (const [size, asked] of sizes.entries()) {
          const counts = found[size] ?? []
          if (asked === null) continue
          const changes = changesOf(at(asked, 0), counts)
          const gaps = changes.map(({ row }, index) => row - (changes[index - 1]?.row ?? 0))
          expect(counts).toHaveLength(at(asked, 2))
          expect(counts.at(-1)).toBe(at(asked, 1))
          expect(changes).toHaveLength(at(asked, 3))
          expect(changes.at(-1)?.row).toBe(at(asked, 2))
          expect(spanOf(gaps)).toBeLessThanOrEqual(1)
          expect(spanOf(changes.map(({ by }) => by))).toBeLessThanOrEqual(1)
          // The count after each increase is said where it is made.
          expect(
            phraseFor('yoke_rounds', asked)
              .match(/(?<=to )\d+/g)
              ?.map(Number),
          ).toEqual(changes.map(({ row }) => counts[row - 1]))
        }
      }),
      { numRuns: 500, ...seed },
    )
  })
})

describe('increases and decreases in one row', () => {
  const changed = fc.record({ over: among(1, 200), part: among(-100, 200) }).map(({ over, part }) => ({
    over,
    by: part < 0 ? Math.ceil((part * over) / 200) : Math.floor((part * over) / 200),
  }))

  it.each([
    ['evenly', []],
    ['spaced', ['sc']],
  ] as const)('%s gives the row as many stitches as it says', (name, words) => {
    const asked = changed.map(({ over, by }): Asked => ({ counts: [by, over], words: [...words] }))
    fc.assert(
      fc.property(sizesOf(asked), (sizes) => {
        const found = worked(
          sizes,
          name,
          (each) => at(each, 1),
          () => 1,
        )
        expect(found).toEqual(sizes.map((each) => (each === null ? [] : [at(each, 0) + at(each, 1)])))
      }),
      { numRuns: 800, ...seed },
    )
  })

  it('leave intervals that differ by one at most, and half of one at either end', () => {
    fc.assert(
      fc.property(among(0, 300), among(1, 100), (stitches, changes) => {
        const plain = intervals(stitches, changes)
        const [lead = 0] = plain
        const tail = plain.at(-1) ?? 0
        expect(plain).toHaveLength(changes + 1)
        expect(plain.reduce((sum, each) => sum + each, 0)).toBe(stitches)
        if (changes > 1) expect(spanOf(plain.slice(1, -1))).toBeLessThanOrEqual(1)
        expect(Math.abs(lead - tail)).toBeLessThanOrEqual(1)
        expect(Math.abs(lead - stitches / changes / 2)).toBeLessThanOrEqual(0.5)
      }),
      { numRuns: 2000, ...seed },
    )
  })
})

describe('shares', () => {
  it('add up to the total, differ by one at most, and are named one by one', () => {
    fc.assert(
      fc.property(among(1, 500), among(1, 60), (total, parts) => {
        const shares = Array.from({ length: parts }, (_, which) => shareOf(total, parts, which + 1))
        expect(shares.reduce((sum, each) => sum + each, 0)).toBe(total)
        expect(spanOf(shares)).toBeLessThanOrEqual(1)
        expect(phraseFor('shares', { counts: [total, parts], words: [] })).toBe(shares.join(', '))
      }),
      { numRuns: 1000, ...seed },
    )
  })
})

describe('whatever is asked', () => {
  const names = [
    'evenly',
    'spaced',
    'taper',
    'waist_taper',
    'armhole_steps',
    'neck_steps',
    'shoulder_steps',
    'yoke_rounds',
    'shares',
  ] as const
  const number = fc.oneof(among(-5, 80), among(-1_000_000, 1_000_000), fc.constantFrom(0, 1, 2, 2_000, 20_000))

  it('a phrase is written or refused, never both, never neither', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.array(number, { minLength: 4, maxLength: 4 }),
        manner,
        (name, counts, words) => {
          const shaped = shape(name, counts, name === 'spaced' ? ['dc'] : words)
          expect(shaped.words === null).toBe(shaped.problem !== null)
          expect(shaped.words === '').toBe(false)
        },
      ),
      { numRuns: 3000, ...seed },
    )
  })

  it('a taper is refused only where it cannot be worked', () => {
    fc.assert(
      fc.property(among(1, 60), among(1, 60), among(1, 30), fc.boolean(), (from, to, rows, single) => {
        const { problem } = shape('taper', [from, to, rows], single ? ['one end'] : [])
        const atOnce = single ? 1 : 2
        const difference = Math.abs(to - from)
        const possible = difference % atOnce === 0 && difference / atOnce <= rows && Math.min(from, to) >= atOnce
        expect(problem === null).toBe(difference === 0 || possible)
      }),
      { numRuns: 2000, ...seed },
    )
  })
})

describe('a phrase in print', () => {
  it('reads for one size as it was written for it', () => {
    const phrases = fc.array(
      fc.option(
        tapered.map((asked) => phraseFor('taper', asked)),
        { freq: 10 },
      ),
      { minLength: 1, maxLength: 5 },
    )
    fc.assert(
      fc.property(phrases, (texts) => {
        const segments = printPhrase(
          texts,
          texts.map((_, size) => `S${size}`),
        )
        for (const [size, text] of texts.entries()) expect(textForSize(segments, size)).toBe(text ?? '–')
        const wordings = new Set(
          texts.map((text) => text?.replace(/\d+/g, '0').replace(/once|twice/g, '0 times') ?? null),
        )
        const oneLine = !textForAll(segments).includes('\n')
        if (oneLine) expect(texts.includes(null) && texts.some((text) => text !== null)).toBe(false)
        if (wordings.size === 1) expect(oneLine).toBe(true)
      }),
      { numRuns: 1000, ...seed },
    )
  })
})
