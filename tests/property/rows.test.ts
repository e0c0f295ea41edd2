import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { totals, work } from '../rows/draft.ts'
import { vocabulary } from '../rows/vocabulary.ts'

const seed = 20260314

const rowLike = fc
  .array(fc.constantFrom(...vocabulary), { maxLength: 40 })
  .map((words) => `## A\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: ${words.join(' ')}`)

describe('no text makes the reader throw or hang', () => {
  it('any characters', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        expect(work(`## A\nRow 1: ${text}`).ledger.written.length).toBeGreaterThanOrEqual(0)
      }),
      { seed, numRuns: 300 },
    )
  })

  it('any row words in any order', () => {
    fc.assert(
      fc.property(rowLike, fc.constantFrom(['One'], ['S', 'M', 'L']), (text, sizes) => {
        const draft = work(text, { sizes })
        for (const row of draft.ledger.rows) expect(row.total).toHaveLength(sizes.length)
      }),
      { seed, numRuns: 1500 },
    )
  })

  it.each([
    ['ten thousand nested brackets', `${'('.repeat(10_000)}sc${')'.repeat(10_000)}`],
    ['ten thousand open brackets', '('.repeat(10_000)],
    ['a row of 100 000 characters', 'sc in next st, '.repeat(6_700)],
    ['a row of 100 000 commas', ','.repeat(100_000)],
    ['stars without end', '*'.repeat(20_000)],
    ['a word without end', 'a'.repeat(100_000)],
    ['a number without end', '9'.repeat(1_000)],
    ['a repeat that uses nothing', '(turn) 1000000000 times'],
    ['a count of a billion', '1000000000 sc in next st'],
    ['nested counts of a thousand', '(((sc in same st) 1000 times) 1000 times) 1000 times'],
    ['bold marks only', '**'.repeat(5_000)],
  ])('%s', (_, steps) => {
    const start = Date.now()
    const draft = work(`## A\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: ${steps}`)
    expect(draft.ledger.rows.length).toBeGreaterThanOrEqual(2)
    expect(Date.now() - start).toBeLessThan(30_000)
  })
})

/** One piece of a row with the stitches it uses and makes: a plain, slow counter adds them up. */
interface Piece {
  readonly words: string
  readonly uses: number
  readonly makes: number
}

const small = fc.integer({ min: 1, max: 9 })

const piece: fc.Arbitrary<Piece> = fc.oneof(
  small.map((n) => ({ words: `sc in next ${n} sts`, uses: n, makes: n })),
  small.map((n) => ({ words: `sc in each of next ${n} sts`, uses: n, makes: n })),
  small.map((n) => ({ words: `${n} sc in next st`, uses: 1, makes: n })),
  small.map((n) => ({ words: `sk ${n} sts`, uses: n, makes: 0 })),
  small.map((n) => ({ words: `inc x ${n}`, uses: n, makes: 2 * n })),
  small.map((n) => ({ words: `${n} dec`, uses: 2 * n, makes: n })),
  fc.constant({ words: 'sc2tog', uses: 2, makes: 1 }),
  fc.constant({ words: 'dc3tog over next 3 sts', uses: 3, makes: 1 }),
  small.map((n) => ({ words: `ch ${n + 1}`, uses: 0, makes: 0 })),
  small.map((n) => ({ words: `(2 dc, ch ${n}, 2 dc) in next st`, uses: 1, makes: 4 })),
)

const lead: Piece = { words: 'sc in next st', uses: 1, makes: 1 }

function counted(pieces: readonly Piece[], times: number): { uses: number; makes: number } {
  let uses = 0
  let makes = 0
  for (let pass = 0; pass < times; pass += 1) {
    for (const each of pieces) {
      uses += each.uses
      makes += each.makes
    }
  }
  return { uses, makes }
}

function workedOn(stitches: number, row: string) {
  return work(
    `## A\nFoundation: Ch ${stitches + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: ${row}`,
  )
}

const body = fc.array(piece, { minLength: 1, maxLength: 6 }).map((pieces) => [lead, ...pieces])

describe('the working agrees with a plain counter', () => {
  it('on rows without repeats', () => {
    fc.assert(
      fc.property(body, (pieces) => {
        const { uses, makes } = counted(pieces, 1)
        const draft = workedOn(uses, `${pieces.map((each) => each.words).join(', ')}.`)
        expect(draft.ledger.rows.at(-1)).toMatchObject({ total: [makes], left: [0], status: 'worked' })
      }),
      { seed, numRuns: 300 },
    )
  })

  it('uses and leaves what there is: more is an error, less is left', () => {
    fc.assert(
      fc.property(body, fc.integer({ min: 1, max: 5 }), (pieces, more) => {
        const { uses } = counted(pieces, 1)
        const words = pieces.map((each) => each.words).join(', ')
        const over = workedOn(uses + more, `${words}.`)
        const last = over.ledger.rows.at(-1)
        expect(last?.left).toEqual([more])
        const under = workedOn(Math.max(1, uses - 1), `${words}.`)
        if (uses > 1) expect(under.ledger.rows.at(-1)?.status).toBe('not-worked')
      }),
      { seed, numRuns: 150 },
    )
  })

  it('on repeats, which equal their written-out form', () => {
    fc.assert(
      fc.property(body, fc.integer({ min: 2, max: 5 }), (pieces, times) => {
        const { uses, makes } = counted(pieces, times)
        const words = pieces.map((each) => each.words).join(', ')
        const forms = [
          new Array(times).fill(words).join(', '),
          `(${words}) ${times} times`,
          `*${words}; rep from * ${times - 1} more times`,
          `*${words}; rep from * across`,
          `*${words}* x ${times}`,
          `*${words}; rep from * to end`,
        ]
        for (const form of forms) {
          const last = workedOn(uses, `${form}.`).ledger.rows.at(-1)
          expect([form, last?.total, last?.left, last?.status]).toEqual([form, [makes], [0], 'worked'])
        }
      }),
      { seed, numRuns: 120 },
    )
  })
})

const ukWords: Readonly<Record<string, string>> = {
  sc: 'dc',
  dc: 'tr',
  hdc: 'htr',
  tr: 'dtr',
  sk: 'miss',
  sc2tog: 'dc2tog',
  dc3tog: 'tr3tog',
}

function inUk(row: string): string {
  return row.replace(/\b(sc2tog|dc3tog|sc|hdc|dc|tr|sk)\b/g, (word) => ukWords[word] ?? word)
}

describe('US and UK spellings', () => {
  it('give one ledger', () => {
    fc.assert(
      fc.property(body, (pieces) => {
        const { uses } = counted(pieces, 1)
        const text = `## A\nCh ${uses + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: ${pieces.map((each) => each.words).join(', ')}.`
        const uk = inUk(text.replace('Sc in', 'sc in'))
        expect(totals(work(uk, { terms: 'uk' }))).toEqual(totals(work(text)))
      }),
      { seed, numRuns: 150 },
    )
  })
})
