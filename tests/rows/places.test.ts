import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

function last(text: string): string {
  const draft = work(text)
  return [...draft.codes, totals(draft).at(-1)].join(' ')
}

const square = `## Square
Ch 4, join.
Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, (3 dc in ring, ch 2) 3 times, join with sl st in top of ch-3. (12 dc)
`

describe('places named by what they belong to', () => {
  it.each([
    [
      'Rnd 2: Ch 1, sc in st at base of ch-1, sc in next 2 dc, 3 sc in ch-2 sp, *sc in next 3 dc, 3 sc in next 2ch sp; rep from * around, join.',
      24,
    ],
    [
      'Rnd 2: Ch 3, dc in base of 3ch, dc in next 2 dc, 2 dc in 2-ch sp, *dc in next 3 dc, 2 dc in next 2ch-sp; rep from * around, join in third of ch-3.',
      21,
    ],
    [
      'Rnd 2: Ch 1, sc in each dc to ch-2 sp, *3 sc in ch-2 sp, sc in each dc to next ch-2 sp; rep from * 2 more times, 3 sc in ch-2 sp, join.',
      24,
    ],
    [
      'Rnd 2: Ch 1, sc in first 3 dc, 3 sc in ch-2 sp, *sc in next 3 dc, 3 sc in ch-2 sp of next block; rep from * around, join.',
      24,
    ],
    [
      'Rnd 2: Ch 3, dc in next 2 dc, 2 dc in next ch-2 sp, *dc in next 3 dc, 2 dc in next ch-2 sp; rep from * around, join with sl st to 3rd of ch-3.',
      20,
    ],
  ])('%s', (row, made) => {
    expect(last(square + row)).toBe(`Rnd 2: ${made}`)
  })

  const shells = `## Special stitches
- **Shell:** (2 dc, ch 2, 2 dc) in same st.

## Lace
Ch 20.
Row 1: Dc in 4th ch from hook, *sk 2 ch, shell in next ch, sk 2 ch; rep from * 2 more times, dc in last ch, turn. (3 shells)
`
  it.each([
    ['Row 2: Ch 3, shell in ch-2 sp of each shell across, dc in last st, turn.', 14],
    ['Row 2: Ch 3, shell in center of each shell, dc in last st, turn.', 14],
    ['Row 2: Ch 3, *shell in ch-2 sp of next shell; rep from * 2 more times, dc in last st, turn.', 14],
    ['Row 2: Ch 3, (3 dc in center of next shell) 3 times, dc in last st, turn.', 11],
  ])('%s', (row, made) => {
    expect(last(shells + row)).toBe(`Row 2: ${made}`)
  })
})
