import { describe, expect, it } from 'vitest'
import { row, work } from './draft.ts'

function on(definitions: string, steps: string, chains = 20) {
  const draft = work(
    `## Special stitches\n${definitions}\n\n## A\nFoundation: Ch ${chains}.\nRow 1: Sc in each ch.\nRow 2: ${steps}`,
  )
  const found = row(draft, 'Row 2')
  return {
    counts: Object.fromEntries(Object.entries(found.counts).map(([key, [count]]) => [key, count])),
    total: found.total[0],
    left: found.left[0],
    codes: draft.codes,
  }
}

describe('special stitches', () => {
  it.each([
    ['- **Shell:** 5 dc in same st.', 'Sk 2 sts, shell in next st, sk 2 sts, sc across.', { shell: 1, dc: 5, sc: 15 }],
    ['- **Shell (sh):** Work 5 dc in next st.', '2 sh, sc across', { shell: 2, dc: 10, sc: 18 }],
    [
      '**V-stitch (V-st):** (dc, ch 1, dc) in indicated st.',
      '*V-st in next st, sk 1; rep from * across',
      { 'V-stitch': 10, dc: 20, 'ch-1 sp': 10 },
    ],
    ['- Puff: [yo, insert hook, pull up loop] 3 times, close. Counts as 1 st.', 'Puff in each st across', { puff: 20 }],
    ['- Bobble (bo): yo, pull up wildly, close', '(Bo, sc) across', { bobble: 10, sc: 10 }],
    ['- Picot: Ch 3, sl st in 3rd ch from hook.', '*Sc in next 5 sts, picot; rep from * across', { sc: 20, picot: 4 }],
    [
      '**Bobble (bo):** dc5tog in same st.',
      '*Bo in next st, sc in next st; rep from *',
      { bobble: 10, dc: 10, dc5tog: 10, sc: 10 },
    ],
    ['**Joint:** dc2tog.', '*Joint, sc in next 2 sts; rep from *', { joint: 5, dc: 5, dc2tog: 5, sc: 10 }],
    ['- **Crossed pair:** Sk next st, dc in next st, dc in skipped st.', 'sc across', { sc: 20 }],
    [
      '- Shell: 3 dc in same st.\n- Big shell: (shell, ch 1, shell) in same st.',
      'Big shell in next st, sc across',
      { 'big shell': 1, shell: 2, dc: 6, 'ch-1 sp': 1, sc: 19 },
    ],
  ])('%s', (definitions, steps, expected) => {
    const found = on(definitions, steps)
    expect(found.counts).toEqual(expected)
    expect(found.left).toBe(0)
  })

  it('are worked into and skipped as one', () => {
    const draft = work(`## Special stitches
- Shell: (2 dc, ch 1, 2 dc) in same st.

## A
Foundation: Ch 20.
Row 1: Ch 3 (counts as dc), *sk 2 chs, shell in next ch, sk 2 chs; rep from * to last 4 chs, dc in last 4 chs, turn.
Row 2: Ch 3, dc in next 3 dc, *shell in next shell; rep from * to last st, dc in last st, turn. (2 shells)
Row 3: Ch 3, sk next shell, shell in next shell, dc in last 4 dc.`)
    expect(
      draft.ledger.rows.map((each) => Object.entries(each.counts).find(([key]) => key === 'shell')?.[1][0] ?? 0),
    ).toEqual([0, 3, 3, 1])
  })
})

describe('the terms that rows use', () => {
  it('are listed once, with their meaning', () => {
    const draft = work(
      '## Special stitches\n- Shell: 5 dc in same st.\n\n## A\nCh 20.\nRow 1: Sc in each ch.\nRow 2: Sc2tog, sk 1, shell in next st, sc in each st.',
    )
    expect(draft.ledger.terms.map((term) => [term.abbreviation, term.meaning, term.special])).toEqual([
      ['ch', 'chain', false],
      ['sc', 'single crochet', false],
      ['sk', 'skip', false],
      ['st(s)', 'stitch(es)', false],
      ['sc2tog', 'single crochet 2 together', false],
      ['shell', '5 dc in same st.', true],
    ])
  })
})
