import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Followed } from '../../src/rows/follow.ts'
import { followRow } from '../../src/rows/follow.ts'
import { work } from './draft.ts'

function line(followed: Followed): string {
  if (followed.kind === 'passed') return `pass ${followed.from}-${followed.to}`
  if (followed.kind === 'again') return `again ${followed.lines}x${followed.times} to ${followed.upTo}`
  const { first, times } = followed
  return `${first.made.join('-')}<${first.into.join('+')}${times > 1 ? ` x${times}` : ''}`
}

function lastRow(text: string): readonly Followed[] {
  const { ledger } = work(text)
  const made = ledger.fabric.at(-1)?.[0] ?? null
  if (made === null) throw new Error('The row has not been worked.')
  return followRow(made, ledger.kinds)
}

const on = (stitches: number, row: string): string =>
  `## A\nCh ${stitches + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: ${row}`

describe('a row as it is followed', () => {
  it.each([
    ['one run', 'Sc in each st across.', ['1-1<1 x20']],
    ['places passed over', 'Sc in first 5 sts, sk 5 sts, sc in next 10 sts.', ['1-1<1 x5', 'pass 6-10', '6-6<11 x10']],
    ['stitches as one', '(Sc2tog) 10 times.', ['1-1<1+2 x10']],
    [
      'several in one place',
      'Sc in next 9 sts, 3 sc in next st, sc in next 10 sts.',
      ['1-1<1 x9', '10-12<10', '13-13<11 x10'],
    ],
    [
      'what repeats, once',
      '*Sc in next 3 sts, 2 sc in next st; rep from * across.',
      ['1-1<1 x3', '4-5<4', 'again 2x4 to 25'],
    ],
    ['an opening chain that does not count has no number', 'Ch 1, sc in each st across.', ['0-0<', '1-1<1 x20']],
    ['places left at the end', 'Sc in next 15 sts, leave rem sts unworked.', ['1-1<1 x15', 'pass 16-20']],
  ])('%s', (_, row, lines) => {
    expect(lastRow(on(20, row)).map(line)).toEqual(lines)
  })

  it('takes the stitches of a ring together', () => {
    expect(lastRow('## A\nRnd 1: 6 sc in magic ring.').map(line)).toEqual(['1-6<'])
  })
})

interface Piece {
  readonly words: string
  readonly uses: number
}

const small = fc.integer({ min: 1, max: 6 })
const pieces: fc.Arbitrary<readonly Piece[]> = fc.array(
  fc.oneof(
    small.map((n) => ({ words: `sc in next ${n} sts`, uses: n })),
    small.map((n) => ({ words: `sk ${n} sts, sc in next st`, uses: n + 1 })),
    small.map((n) => ({ words: `${n} dec`, uses: 2 * n })),
    small.map((n) => ({ words: `${n} sc in next st`, uses: 1 })),
    small.map((n) => ({ words: `(2 dc, ch ${n}, dc) in next st`, uses: 1 })),
  ),
  { minLength: 1, maxLength: 8 },
)

/** Places of the row below that the lines tell of, each once, in order. */
function told(lines: readonly Followed[]): number[] {
  const found: number[] = []
  let block: number[][] = []
  for (const each of lines) {
    if (each.kind === 'again') {
      const pass = block.slice(-each.lines).flat()
      const by = Math.max(...pass) - Math.min(...pass) + 1
      for (let time = 1; time <= each.times; time += 1) found.push(...pass.map((place) => place + time * by))
      block = []
      continue
    }
    const own: number[] = []
    if (each.kind === 'passed') for (let place = each.from; place <= each.to; place += 1) own.push(place)
    else {
      const { into } = each.first
      for (let time = 0; time < each.times; time += 1) own.push(...into.map((place) => place + time * into.length))
    }
    found.push(...own)
    block.push(own)
  }
  return found
}

describe('places used, passed over and left are all there are', () => {
  it('on rows of any steps, written once or in a repeat', () => {
    fc.assert(
      fc.property(pieces, fc.integer({ min: 1, max: 5 }), fc.integer({ min: 0, max: 7 }), (row, times, left) => {
        const uses = times * row.reduce((sum, piece) => sum + piece.uses, 0)
        const steps = `*${row.map((piece) => piece.words).join(', ')}; rep from * ${times - 1} more times`
        const lines = lastRow(on(uses + left, `${steps}${left > 0 ? ', leave rem sts unworked' : ''}.`))
        expect(told(lines)).toEqual(Array.from({ length: uses + left }, (_, at) => at + 1))
      }),
      { seed: 20260314, numRuns: 300 },
    )
  })
})
