import { describe, expect, it } from 'vitest'
import { row, work } from './draft.ts'

const mat = '## Mat\nFoundation: Ch 20.\nRow 1: Sc in each ch.\n'

function made(text: string) {
  const draft = work(text)
  const found = draft.ledger.rows.at(-1)
  const counts = Object.fromEntries(Object.entries(found?.counts ?? {}).map(([key, [count]]) => [key, count]))
  return { counts, left: found?.left[0], status: found?.status, codes: draft.codes }
}

describe('definitions under a heading', () => {
  it.each([
    [
      'Puff (pf): (Yarn over, insert hook in same st, draw up a loop) 4 times, yarn over, draw through all loops.',
      '(Pf, sc) across',
      { puff: 10, sc: 10 },
    ],
    [
      'Popcorn (pc): 5 dc in next st, remove hook from loop, insert it in first dc, draw loop through.',
      '(Pc, sc) across',
      { popcorn: 10, sc: 10 },
    ],
    [
      'MB: 4 tr in same st leaving last loop of each on hook, yo, draw through all loops.',
      '(MB, sc) across',
      { MB: 10, sc: 10 },
    ],
    [
      '3-dc cluster (3-dc cl): *yo, insert hook in st, pull up a loop, yo, pull through 2 loops; rep from * 2 more times, yo, pull through.',
      '(3-dc cl in next st, sc) across',
      { '3-dc cluster': 10, sc: 10 },
    ],
    [
      'Spike: insert hook in st 2 rows below, pull up a long loop, yo, pull through 2 loops.',
      '(Spike, sc) across',
      { spike: 10, sc: 10 },
    ],
    [
      'Slanted pair: *insert hook in next st, pull up a loop; rep from * once more, yo, pull through all 3 loops.',
      'Slanted pair across',
      { 'slanted pair': 10, sc: 10 },
    ],
    [
      'Invisible decrease (invdec): insert hook in front loops of next 2 sts, yo, pull through.',
      '(Invdec, sc in next 2 sts) across',
      { sc: 15 },
    ],
    [
      'Extended single crochet (esc): insert hook, pull up a loop, yo, pull through 1 loop, yo, pull through 2.',
      'Esc across',
      { esc: 20 },
    ],
    ['Fan: 3 tr in st or sp indicated.', '(Fan in next st, sk 1) across', { fan: 10, tr: 30 }],
    [
      'Fan: work (dc, ch 2, dc) all in the same stitch.',
      '(Fan in next st, sk 1) across',
      { fan: 10, dc: 20, 'ch-2 sp': 10 },
    ],
    [
      'V-Stitch (V-st): (Dc, ch 1, dc) in indicated st or sp.',
      '(V-st in next st, sk 1) across',
      { 'V-stitch': 10, dc: 20, 'ch-1 sp': 10 },
    ],
    [
      'Shell: (2 dc, ch 1, 2 dc) in place given.',
      '(Shell in next st, sk 3) across',
      { shell: 5, dc: 20, 'ch-1 sp': 5 },
    ],
    [
      'Open mesh (OM): ch 2, sk next 2 sts, dc in next st.\n- Block (BL): dc in next 3 sts.',
      'Sc in next 2 sts, (OM, BL) 3 times',
      { sc: 2, dc: 12, 'ch-2 sp': 3, 'open mesh': 3, block: 3 },
    ],
    ['Picot: ch 3, sl st in base.', '(2 sc, picot) across', { sc: 20, picot: 10 }],
    [
      'Beg cl: ch 3, dc2tog in same st.\n- Cl: dc3tog in next st.',
      'Beg cl in first st, cl in each st across',
      { 'beg cl': 1, dc2tog: 1, cl: 19, dc3tog: 19, dc: 20 },
    ],
    [
      'Beg shell: ch 3 (counts as dc), 2 dc in same st.\n- Shell: 3 dc in same st.',
      'Beg shell in first st, sk 1, (shell in next st, sk 1) across',
      { 'beg shell': 1, shell: 9, dc: 30 },
    ],
    ['Granny: 3 dc in same sp; counts as 3 sts.', '(Granny in next st, sk 1) across', { granny: 10, dc: 30 }],
    ['Knot: draw it up as you like, counts as 1 st.', '(Knot, sc) across', { knot: 10, sc: 10 }],
    [
      'Puff stitch: yo, insert hook,\n  pull up a loop, yo, pull through.',
      '(Puff, sc) across',
      { 'puff stitch': 10, sc: 10 },
    ],
  ])('%s', (definition, steps, expected) => {
    const found = made(`## Special stitches\n- ${definition}\n\n${mat}Row 2: ${steps}`)
    expect(found).toEqual({ counts: expected, left: 0, status: 'worked', codes: [] })
  })

  it.each([
    ['Wisp: something soft.', 'Wisp across', 'special-unread'],
    ['Shell: something round.', 'Shell in next st, sc across', 'special-unread'],
  ])('that tell nothing: %s', (definition, steps, code) => {
    expect(made(`## Special stitches\n- ${definition}\n\n${mat}Row 2: ${steps}`).codes).toContain(code)
  })

  it('may give other names', () => {
    const found = made(
      `## Abbreviations\n- sh = shell\n- bob – bobble\n- shell: 4 dc in same st\n\n${mat}Row 2: (Sh in next st, bob in next st) across.`,
    )
    expect(found.counts).toEqual({ shell: 10, dc: 40, bobble: 10 })
  })

  it('may be letters for what every row knows', () => {
    const ball =
      '## Ball\nRnd 1: 6 sc in magic ring.\nRnd 2: 6V. (12)\nRnd 3: (X, V) x 6. (18)\nRnd 4: (X, A) x 6. (12)'
    const draft = work(
      `## Abbreviations\n- X: single crochet\n- V: increase (2 sc in one st)\n- A = decrease\n\n${ball}`,
    )
    expect(draft.codes).toEqual([])
    expect(draft.ledger.rows.map(({ total }) => total[0])).toEqual([6, 12, 18, 12])
  })

  it('may differ by size', () => {
    const draft = work(
      `## Special stitches\n- Shell: 5 (7) dc in same st.\n\n${mat}Row 2: (Shell in next st, sk 1) across.`,
      {
        sizes: ['S', 'M'],
      },
    )
    expect(row(draft, 'Row 2').counts).toEqual({ shell: [10, 10], dc: [50, 70] })
  })
})

describe('definitions among rows and notes', () => {
  it.each([
    [
      'Special stitch: Twin = (dc, ch 1, dc) in indicated st.',
      '(Twin in next st, sk 1) across',
      { Twin: 10, dc: 20, 'ch-1 sp': 10 },
    ],
    ['Shell: 3 dc in next st.', '(Shell in next st, sk 1) across', { shell: 10, dc: 30 }],
    ['Note: the shell = 3 dc.', '(Shell in next st, sk 1) across', { shell: 10, dc: 30 }],
    ['', '(Shell (3 dc in same st) in next st, sk 1) across', { shell: 10, dc: 30 }],
    ['', '3 dc in next st (shell made), sk 1, (shell in next st, sk 1) across', { shell: 9, dc: 30 }],
    ['', 'Beg puff in first st, puff in each st across', { 'beg puff': 1, puff: 19 }],
    ['', '(4-dc cluster in next st, sc) across', { '4-dc cluster': 10, sc: 10 }],
  ])('%s %s', (note, steps, expected) => {
    const found = made(`## Mat\n${note}\n\n${mat.slice('## Mat\n'.length)}Row 2: ${steps}`)
    expect(Object.fromEntries(Object.entries(found.counts).map(([key, count]) => [key.toLowerCase(), count]))).toEqual(
      Object.fromEntries(Object.entries(expected).map(([key, count]) => [key.toLowerCase(), count])),
    )
    expect([found.left, found.codes.filter((code) => code !== 'special-undefined')]).toEqual([0, []])
  })

  it.each([
    'Gauge: 12 sts = 10 cm',
    'Finished size: 20 cm',
    'Note: work loosely.',
    'Edging: sc around.',
    'Row 1 is the right side.',
  ])('prose is none: %s', (prose) => {
    const found = made(`## Mat\n${prose}\n\n${mat.slice('## Mat\n'.length)}Row 2: Sc across.`)
    expect(found).toEqual({ counts: { sc: 20 }, left: 0, status: 'worked', codes: [] })
  })
})
