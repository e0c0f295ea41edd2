import { describe, expect, it } from 'vitest'
import { rowFindings } from '../../src/diagnostic/catalogue/rows.ts'
import { row, work } from './draft.ts'

/** A draft with what is found marked as ‹…›, and the sizes and words of the finding. */
interface Case {
  readonly code: keyof typeof rowFindings
  readonly text: string
  readonly says: RegExp
  readonly sizes?: readonly string[]
  readonly concerns?: readonly number[]
  readonly hint?: RegExp
  readonly rowsPer10cm?: null
}

const twenty = '## A\nFoundation: Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n'

const cases: readonly Case[] = [
  {
    code: 'count-mismatch',
    text: `${twenty}Row 2: Inc, sc in each st. ‹(20 sc)›`,
    says: /Row 2 states 20 sc, but its steps make 21\./,
  },
  {
    code: 'count-mismatch',
    text: '## A\nCh 10 (12, 14).\nRow 1: Sc in each ch. ‹(10, 12, 13)›',
    sizes: ['S', 'M', 'L'],
    concerns: [2],
    says: /13 sts for L, but its steps make 14\./,
  },
  {
    code: 'unlike-other-rows',
    text: '## A\nCh 23.\nRow 1: Dc in 4th ch from hook and in each ch across. ‹(20 dc)›',
    says: /Row 1 comes out only if the 3 chains skipped at its beginning do not count as a stitch/,
    hint: /write “\(does not count as a st\)” after the chain/,
  },
  {
    code: 'ordinal-ending',
    text: `${twenty}‹2th› row: Sc across.`,
    says: /“2th”: the number and its ending do not go together/,
    hint: /^Write 2nd, or check the number/,
  },
  {
    code: 'chain-sum',
    text: `${twenty}Row 2: ‹Ch 4 (counts as dc and ch 2)›, sk 1 sc, dc in next sc, leave rem sts unworked.`,
    says: /a chain of 4 is not what it is said to count as, which takes 5/,
  },
  {
    code: 'chain-named',
    text: '## A\nCh 22.\nRow 1: Dc in 4th ch from hook and in each ch across.\nRow 2: Ch 3 (counts as dc), dc in next 18 dc, dc in ‹top of ch-2›.',
    says: /Row 2: “top of ch-2” names a chain of 2, but none opens this row or the one below/,
    hint: /3 or 4/,
  },
  {
    code: 'row-named-twice',
    text: `${twenty}Row 2: Sc across.\nRow 3: Sc across.\nRows 4–9: ‹Rep Rows 3 and 3.›`,
    says: /Row 3 is named twice/,
  },
  {
    code: 'range-length',
    text: `${twenty}Rows 2–6 ‹(6 rows)›: Sc across.`,
    says: /The label stands for 5 rows, but the words say 6/,
  },
  {
    code: 'kind-counted-twice',
    text: `${twenty}Row 2: Sc across. ‹(20 sc, 20 sc)›`,
    says: /names sc twice/,
  },
  {
    code: 'count-of-other-row',
    text: `${twenty}Rows 2–4: Sc across. 20 sc at ‹end of Row 5›.`,
    says: /that of row 5, but stands at row 4/,
  },
  {
    code: 'first-row-number',
    text: '## A\nCh 21.\n‹Row 2:› Sc in 2nd ch from hook and in each ch across.',
    says: /A: the first row is Row 2, and no row comes before it/,
  },
  {
    code: 'left-otherwise',
    text: `${twenty}Row 2: ‹Sc in each st to last 6 sts, leave last 7 sts unworked.›`,
    says: /Row 2 says that 7 stitches are left, but its steps leave 6/,
  },
  {
    code: 'opening-unlike',
    text: `${twenty}Row 2: Ch 1, sc across.\nRow 3: Ch 1, inc, sc across.\nRow 4: ‹Ch 2›, sc across.\nRow 5: Ch 1, sc across.`,
    says: /Row 4 opens with ch 2, where the other rows that begin with this stitch open with ch 1/,
  },
  {
    code: 'together-over',
    text: `${twenty}Row 2: ‹Sc3tog over first 2› sts, sc across.`,
    says: /3 stitches are worked together, but over 2/,
  },
  {
    code: 'ordinal-ending',
    text: '## A\nCh 21.\nRow 1: Sc in ‹3nd› ch from hook and in each ch across. (19 sc)',
    says: /“3nd”: the number and its ending/,
    hint: /^Write 3rd/,
  },
  {
    code: 'together-over',
    text: `${twenty}Row 2: ‹Sc2tog over first 1› sts, sc across.`,
    says: /2 stitches are worked together, but over 1/,
  },
  {
    code: 'repeat-does-not-come-out',
    text: `${twenty}Row 2: *Sc in next 2 sts, inc; ‹rep from * across›.`,
    says: /6 whole repeats fit, 2 stitches are left over, and each uses 3 stitches/,
    hint: /18 or 21/,
  },
  {
    code: 'repeat-does-not-come-out',
    text: `${twenty}Row 2: ‹(Sc, sc2tog) 7 times›.`,
    says: /6 whole repeats of the 7 written fit, 2 stitches are left over/,
    hint: /21/,
  },
  {
    code: 'repeat-does-not-come-out',
    text: `${twenty}Row 2: *3 sc, inc; ‹rep from * to last 3 sts›, 3 sc.`,
    says: /4 whole repeats fit, 1 stitch is left over/,
    hint: /19 or 23/,
  },
  {
    code: 'repeat-does-not-come-out',
    text: '## A\nCh 60 (72, 84).\nRow 1: Sc in each ch.\nRow 2: *Sc in next 5 sts, inc; ‹rep from * 10 (13, 13) more times›.',
    sizes: ['S', 'M', 'L'],
    concerns: [0, 1],
    says: /does not come out for S and M: for S 10 whole repeats of the 11 written fit/,
    hint: /^Write 9 \(11, 13\) more times, for S \(M, L\)\.$/,
  },
  {
    code: 'repeat-does-not-come-out',
    text: `${twenty}Row 2: ‹(Sc in next 3 sts, inc) 6 times›.`,
    says: /5 whole repeats of the 6 written fit/,
    hint: /^Write 5 times\.$/,
  },
  {
    code: 'repeat-does-not-come-out',
    text: '## A\nCh 22.\nRow 1: Sc in 2nd ch from hook, *sc in next 3 chs, ** ch 1, sk 1; ‹rep from * across, ending last rep at **›.\n',
    says: /5 whole repeats fit, 1 stitch is left over/,
    hint: /^It would fit a foundation of 21 or 25 chains\.$/,
  },
  {
    code: 'count-mismatch',
    text: '## A\nCh 60 (72, 84).\nRow 1: Sc in each ch.\nRow 2: *Sc in next 5 sts, inc; rep from * 9 (11, 11) more times. ‹(70 (84, 98))›',
    sizes: ['S', 'M', 'L'],
    concerns: [2],
    says: /98 sts for L, but its steps make 84\./,
    hint: /^Write 9 \(11, 13\) more times, for S \(M, L\)\.$/,
  },
  {
    code: 'count-mismatch',
    text: `${twenty}Row 2: Ch 3 (counts as dc), dc in next st and in each st across. ‹(19 dc)›`,
    says: /states 19 dc, but its steps make 20\./,
    hint: /opening chain counts/,
  },
  {
    code: 'count-mismatch',
    text: `${twenty}Row 2: Ch 3 (does not count), dc in each st across. ‹(21 dc)›`,
    says: /states 21 dc, but its steps make 20\./,
    hint: /opening chain does not count/,
  },
  {
    code: 'too-few-stitches',
    text: `${twenty}Row 2: ‹Sc in next 21 sts›.`,
    says: /asks for 21 stitches, and only 20 are left/,
  },
  { code: 'too-few-stitches', text: `${twenty}Row 2: Sc across, ‹sc in next st›.`, says: /and none is left/ },
  {
    code: 'no-such-place',
    text: `${twenty}Row 2: ‹3 dc in next ch-2 sp›.`,
    says: /goes into ch-2 spaces/,
    hint: /^The row below has 20 sc\.$/,
  },
  {
    code: 'nothing-below',
    text: '## A\nRow 1: ‹Sc in each st across›.',
    says: /nothing has been made before/,
    hint: /foundation chain/,
  },
  {
    code: 'bare-repeat-left',
    text: `${twenty}Row 2: Sc in next st, 2 sc in next st, sc in next st, ‹repeat›.`,
    says: /leaves 2 stitches of the row below over/,
    hint: /repeat from \*/,
  },
  {
    code: 'base-unknown',
    text: '## A\nRow 1: ‹Join yarn with sl st in any corner›, sc in each st across.',
    says: /this draft does not make/,
    hint: /say of how many/,
  },
  { code: 'repeat-goes-nowhere', text: `${twenty}Row 2: Sc, *ch 1; ‹rep from * across›.`, says: /would never end/ },
  { code: 'row-too-long', text: `${twenty}Row 2: ‹99999 sc in next st›.`, says: /more than 20000/ },
  {
    code: 'count-below-zero',
    text: `${twenty}Row 2: ‹sk {{n}} sts›, sc across.`,
    says: /asks for -2/,
  },
  {
    code: 'stitches-left',
    text: `${twenty}Row 2: ‹Sc in next 18 sts.›`,
    says: /leaves 2 stitches/,
    hint: /leave remaining/,
  },
  { code: 'row-unread', text: `${twenty}Row 2: Sc in next 3 sts, ‹wibble 4 wobbles›.`, says: /“wibble 4 wobbles”/ },
  {
    code: 'no-such-place',
    text: `${twenty}Row 2: *Sc in next st, ch 3, sk 1; rep from * across.\nRow 3: ‹3 dc in next ch-2 sp›.`,
    says: /goes into ch-2 spaces/,
    hint: /^The row below has 10 sc, 10 ch-3 sps\.$/,
  },
  {
    code: 'unknown-row-reference',
    text: `${twenty}Row 2: Sc across.\nRow 3: ‹Rep Rows 1–5.›`,
    says: /no row 3/,
    hint: /^Before it stand rows 1–2\.$/,
  },
  {
    code: 'row-unread',
    text: `${twenty}Row 2: Sc in next 3 sts, ‹shel in next st›.`,
    says: /Row 2/,
    hint: /“shel” may be “shell”/,
  },
  {
    code: 'word-of-other-terms',
    text: `${twenty}Row 2: ‹htr› in each st.`,
    says: /“htr” is a word of UK terms.* Row 2/,
    hint: /“hdc”/,
  },
  {
    code: 'repeat-without-mark',
    text: `${twenty}Row 2: Sc in next st; ‹rep from * across›.`,
    says: /no \* stands before/,
    hint: /Put \*/,
  },
  {
    code: 'size-list-length',
    text: '## A\nFoundation: Ch ‹10 (12)›.',
    sizes: ['S', 'M', 'L'],
    says: /2 numbers, but the draft has 3 sizes/,
  },
  {
    code: 'size-list-length',
    text: '## A\nCh 60 (72, 84).\nRow 1: Sc in each ch across. (‹60 (72, 84, 96)› sc)',
    sizes: ['S', 'M', 'L'],
    says: /4 numbers, but the draft has 3 sizes/,
  },
  {
    code: 'size-list-length',
    text: '## A\nCh 60 (72, 84).\nRow 1: Sc in next ‹60 (72, 84, 96)› chs.',
    sizes: ['S', 'M', 'L'],
    says: /4 numbers, but the draft has 3 sizes/,
  },
  {
    code: 'no-such-place',
    text: `${twenty}Row 2: ‹Sc in 2nd ch from hook and in each ch across›. (19)`,
    says: /goes into chains from the hook/,
  },
  {
    code: 'row-unread',
    text: `${twenty}Row 2: Sc in next 5 sts, ‹3 sc in corner›, sc across.`,
    says: /“3 sc in corner”/,
  },
  { code: 'row-label-twice', text: `${twenty}‹Row 1:› Sc across.`, says: /Row 1 stands twice in A/ },
  { code: 'row-number-gap', text: `${twenty}‹Row 3:› Sc across.`, says: /follows where 2 would be next/ },
  {
    code: 'side-out-of-step',
    text: `${twenty}Row 2 (RS): Sc across.\nRow 3: Sc across.\n‹Row 4 (WS):› Sc across.`,
    says: /Row 4 is marked WS, but .* it is worked on the RS/,
    hint: /do not turn/,
  },
  {
    code: 'row-parity-differs',
    text: `${twenty}Row 2 (RS): Sc across.\n‹Rows 3–7 (8, 9):› Sc across.\nRow 8 (9, 10) (RS): Sc across.`,
    says: /“Rows 3–7 \(8, 9\)” is 5 \(6, 7\) rows, an even number for M: there Row 8 \(9, 10\) is worked on the WS/,
    sizes: ['S', 'M', 'L'],
    concerns: [1],
    hint: /`as even` or `as odd`/,
  },
  {
    code: 'ends-on-other-side',
    text: `${twenty}Row 2 (RS): Sc across, turn.\n‹Rows 3–8:› Sc across, turn, ending with a WS row.`,
    says: /“Rows 3–8” is to end with a WS row, but its last row is worked on the RS/,
  },
  {
    code: 'unknown-row-reference',
    text: `${twenty}Row 2: ‹Rep Row 5.›`,
    says: /no row 5/,
    hint: /^Before it stands row 1\.$/,
  },
  {
    code: 'row-gauge-missing',
    text: `${twenty}Row 2: Sc across.\n\n‹Rep Row 2 until piece measures 20 cm.›`,
    says: /no row gauge/,
    rowsPer10cm: null,
  },
  { code: 'range-too-long', text: `${twenty}‹Rows 2–9999: Sc across.›`, says: /more than 2000 rows/ },
  {
    code: 'shaping-rows-differ',
    text: `${twenty}Rows 2–6: ‹Dec 1 st at each end of every 2nd row twice.›`,
    says: /5 rows, and their shaping takes 4; the rows after it have been worked even/,
  },
  {
    code: 'repeated-rows-differ',
    text: `${twenty}Row 2: Sc across.\nRow 3: Sc across.\nRows 4–8: ‹Rep Rows 2 and 3 three times.›`,
    says: /5 rows, and the repeats in them come to 6/,
  },
  {
    code: 'repeats-foundation-row',
    text: `${twenty}Row 2: ‹Rep Row 1.›`,
    says: /Row 2 repeats row 1, which is worked into the foundation chain/,
  },
  {
    code: 'unknown-row-name',
    text: `${twenty}Row 2 (inc row): Inc, sc across.\nRow 3: ‹Rep dec row.›`,
    says: /Row 3 goes back to the dec row/,
    hint: /“\(dec row\)”/,
  },
  {
    code: 'shaping-never-there',
    text: `${twenty}‹Dec 1 st at each end of every row until 13 sts rem.›`,
    says: /goes on to 13 stitches, but from 20 by steps of 2/,
  },
  {
    code: 'range-backwards',
    text: `${twenty}‹Rows 8–2:› Sc across.\nRow 9: Sc across.`,
    says: /Rows 8–2: the last number/,
  },
  { code: 'row-unread', text: `${twenty}‹Row 2:›\nRow 3: Sc across.`, says: /Row 2 has no steps/ },
  { code: 'row-unread', text: `${twenty}\n**‹Row 2:›**`, says: /Row 2 has no steps/ },
  {
    code: 'special-unread',
    text: `## Special stitches\n- ‹Loopy (lo): pull up wildly 3 times.›\n\n${twenty}Row 2: Sc across, lo in next st.`,
    says: /can’t be worked/,
  },
  {
    code: 'special-unread',
    text: `## Special stitches\n- ‹Shell (sh): pull up wildly 3 times.›\n\n${twenty}Row 2: Sk 2 sts, sh in next st, sk 2 sts, sc across. (1 sh, 15 sc)`,
    says: /worked as 5 double crochet in one place/,
  },
  {
    code: 'special-unread',
    text: `## Special stitches\n- ‹Loopy thing: pull up wildly 3 times.›\n\n${twenty}`,
    says: /Loopy thing|loopy thing/,
  },
  {
    code: 'special-undefined',
    text: `${twenty}Row 2: Sc in next 10 sts, ‹bobble in next st›, sc in next 9 sts.`,
    says: /bobble is not defined/,
  },
  { code: 'count-unread', text: `${twenty}Row 2: Sc across. ‹(5 blocks)›`, says: /blocks/ },
]

function marked(text: string): { plain: string; start: number; end: number } {
  const start = text.indexOf('‹')
  const end = text.indexOf('›') - 1
  return { plain: text.replace(/[‹›]/g, ''), start, end }
}

describe('findings about rows', () => {
  it.each(cases)('$code: $text', ({ code, text, says, sizes, concerns, hint, rowsPer10cm }) => {
    const { plain, start, end } = marked(text)
    const holes = { n: { kind: 'number', bySize: [-2] } } as const
    const draft = work(plain, {
      holes,
      ...(sizes === undefined ? {} : { sizes }),
      ...(rowsPer10cm === null ? { rowsPer10cm } : {}),
    })
    // One finding for one cause.
    expect(draft.codes).toEqual([code])
    const [found] = draft.found
    expect(found?.message).toMatch(says)
    expect(plain.slice(found?.at.start, found?.at.end)).toBe(plain.slice(start, end))
    if (concerns !== undefined) expect(found?.sizes).toEqual(concerns)
    if (hint !== undefined) expect(found?.hint).toMatch(hint)
  })

  it('every code has a case', () => {
    const shown = new Set<string>(cases.map((each) => each.code))
    expect(Object.keys(rowFindings).filter((code) => !shown.has(code))).toEqual([])
  })
})

it('what can’t be read is in the ledger once, under its own label', () => {
  const draft = work(`${twenty}Rows 8–2: Sc across.\n\n## B\nCh 9.\nRow 1:\n\nSc in each ch.\n\nRow 2:`)
  expect(draft.ledger.rows.slice(2).map((each) => [each.label, each.status, each.reason])).toEqual([
    ['Rows 8–2', 'not-worked', 'Rows 8–2: the last number is lower than the first.'],
    [null, 'worked', null],
    ['Row 1', 'worked', null],
    ['Row 2', 'unread', 'It has no steps.'],
  ])
})

it('a reason shows the words as they are written', () => {
  const draft = work('## A\nCh 60 (72).\nRow 1: Florble 10 (12) sc.', { sizes: ['S', 'M'] })
  expect(row(draft, 'Row 1').reason).toBe('The reader stopped at “Florble 10 (12) sc”.')
})

describe('after a row that can’t be worked', () => {
  it('the rows of the piece wait without more findings, and a new piece goes on', () => {
    const draft = work(
      `${twenty}Row 2: Sc in next 30 sts.\nRow 3: Sc across. (99)\n\n## B\nCh 11.\nRow 1: Sc in each ch.`,
    )
    expect(draft.codes).toEqual(['too-few-stitches'])
    expect(draft.ledger.rows.map((each) => each.status)).toEqual([
      'worked',
      'worked',
      'not-worked',
      'not-worked',
      'worked',
      'worked',
    ])
    expect(row(draft, 'Row 3').reason).toMatch(/before it/)
  })

  it('other sizes go on', () => {
    const draft = work('## A\nCh 10 (20).\nRow 1: Sc in next 10 (21) chs.\nRow 2: Sc across.', { sizes: ['S', 'M'] })
    expect(draft.found.map((each) => [each.code, each.sizes])).toEqual([['too-few-stitches', [1]]])
    expect(row(draft, 'Row 2')).toMatchObject({ total: [10, null], status: 'not-worked' })
  })

  it('a miss of the stated count is told once, and again when a row has one of its own', () => {
    const draft = work(`${twenty}Row 2: Inc, sc across. (20)\nRow 3: Sc across. (20)\nRow 4: Sc across. (22)`)
    expect(draft.found.map((each) => each.message)).toEqual([
      'Row 2 states 20 sts, but its steps make 21.',
      'Row 4 states 22 sts, but its steps make 21.',
    ])
    expect(draft.ledger.rows.map((each) => each.agrees)).toEqual([null, null, false, false, false])
  })
})

/** Codes of findings, each with the sizes it concerns. */
function told(text: string): readonly string[] {
  const draft = work(text, { sizes: ['S', 'M', 'L'] })
  return draft.found.map((each) => `${each.code} ${each.sizes.join(' ')}`)
}

describe('one cause, one finding', () => {
  const wrongFoundation = '## A\nCh 12 (18, 25).\nRow 1: Sc in each ch across. (12 (18, 24))\n'

  it.each([
    [`${wrongFoundation}Row 2: Sc in each st across. (12 (18, 24))`, ['count-mismatch 2']],
    [`${wrongFoundation}Row 2: Inc in each st across. (24 (36, 48))`, ['count-mismatch 2']],
    [`${wrongFoundation}Row 2: *Sc in next 2 sts, inc; rep from * across. (16 (24, 32))`, ['count-mismatch 2']],
    [`${wrongFoundation}Row 2: (Sc in next 2 sts, inc) 4 (6, 8) times.\nRow 3: Sc across.`, ['count-mismatch 2']],
    [`${wrongFoundation}Row 2: Sc in next 12 (18, 24) sts.`, ['count-mismatch 2']],
    // Which reading is meant, the other sizes tell.
    [`${wrongFoundation}Row 2: *Sc in next 2 sts, inc; rep from * 4 (6, 8) times. (16 (24, 32))`, ['count-mismatch 2']],
    [
      '## A\nCh 12 (18, 24).\nRow 1: Sc in each ch.\nRow 2: *Sc in next 2 sts, inc; rep from * 4 (6, 9) times. (16 (24, 32))',
      ['repeat-does-not-come-out 2'],
    ],
    // A foundation short of what its rows ask for.
    [
      '## A\nCh 12 (18, 23).\nRow 1: Sc in each ch. (12 (18, 24))\nRow 2: Sc in next 12 (18, 24) sts.',
      ['count-mismatch 2'],
    ],
    // Row 3 is wrong by itself, in one size of its own and in the one that was wrong before.
    [
      `${wrongFoundation}Row 2: Sc across. (12 (18, 24))\nRow 3: Inc, sc across. (13 (20, 27))`,
      ['count-mismatch 2', 'count-mismatch 1 2'],
    ],
    // Row 2 comes out again.
    [
      `${wrongFoundation}Row 2: Sc in next 12 (18, 24) sts, leave rem sts unworked. (12 (18, 24))\nRow 3: Sc across. (12 (18, 25))`,
      ['count-mismatch 2', 'count-mismatch 2'],
    ],
    [`${wrongFoundation}\n## B\nCh 10.\nRow 1: Sc in each ch. (10 (10, 11))`, ['count-mismatch 2', 'count-mismatch 2']],
    [
      '## A\nCh 12 (18, 25).\nRow 1: *Sc in next 2 chs, inc; rep from * across.\nRow 2: Sc across. (16 (24, 32))',
      ['repeat-does-not-come-out 2'],
    ],
  ])('%s', (text, expected) => {
    expect(told(text)).toEqual(expected)
  })

  it.each([
    [['S', 'M', 'L'], '(60 (72, 84))', 'Row 2 states 60 (72, 84) sts, but its steps make 62 (74, 86).'],
    [['S', 'M', 'L'], '(60 (74, 84) sc)', 'Row 2 states 60 (84) sc for S and L, but its steps make 62 (86).'],
    [['S', 'M', 'Adult L'], '(62 (74, 84) sc)', 'Row 2 states 84 sc for Adult L, but its steps make 86.'],
    [
      ['S', 'M', 'L'],
      '(60 (70, 80) sc, 2 dc)',
      'Row 2 states 60 (70, 80) sc, 2 dc, but its steps make 62 (74, 86) sc, 0 dc.',
    ],
  ])('states and works side by side: %s %s', (sizes, count, message) => {
    const text = `## A\nCh 60 (72, 84).\nRow 1: Sc in each ch.\nRow 2: Inc, sc to last st, inc. ${count}`
    expect(work(text, { sizes }).found.map((each) => each.message)).toEqual([message])
  })
})
