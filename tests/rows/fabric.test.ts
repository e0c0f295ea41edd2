import { describe, expect, it } from 'vitest'
import { orderOf, positionOf } from '../../src/rows/past.ts'
import { printPlace } from '../../src/rows/print.ts'
import { dictionaryFor } from '../../src/rows/terms/dictionary.ts'
import { work } from './draft.ts'

/** The last row of a draft: each place with what it goes into, as `dc<2` or `sc<1+2`, positions from 0. */
function fabric(text: string): string {
  const { ledger } = work(text)
  const row = ledger.fabric.at(-1)?.[0] ?? null
  if (row === null) return 'not worked'
  const { into, again } = row.trace()
  const below = Math.max(...into.map((ref) => (ref < 0 ? -1 : orderOf(ref))))
  const name = (ref: number): string => `${orderOf(ref) === below ? '' : '^'}${positionOf(ref)}`
  return row.row.places
    .map((number, at) => {
      const kind = ledger.kinds[number]
      const shown = (kind === undefined ? null : printPlace(kind, dictionaryFor('us'))) ?? 'tch'
      const bases = [into[at] ?? -1, ...(again.get(at) ?? [])].filter((ref) => ref >= 0)
      return bases.length === 0 ? shown : `${shown}<${bases.map(name).join('+')}`
    })
    .join(' ')
}

const four = '## A\nCh 5.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n'

describe('what each stitch goes into', () => {
  it.each([
    ['a foundation chain', '## A\nCh 4.\nRow 1: Sc in 2nd ch from hook and in each ch across.', 'tch sc<2 sc<1 sc<0'],
    [
      'a chain in the same row',
      '## A\nRow 1: Ch 4, sc in 2nd ch from hook and in each ch across.',
      'tch sc<2 sc<1 sc<0',
    ],
    ['chains skipped that count', '## A\nCh 5.\nRow 1: Dc in 4th ch from hook and in last ch.', 'dc<2 dc<1 dc<0'],
    // The row is turned: its last stitch comes first.
    ['the row below, turned', `${four}Row 2: Ch 1, sc in each st across.`, 'tch sc<4 sc<3 sc<2 sc<1'],
    ['one place twice', `${four}Row 2: 2 sc in first st, sc in next 3 sts.`, 'sc<4 sc<4 sc<3 sc<2 sc<1'],
    ['two places as one', `${four}Row 2: Sc2tog, sc2tog.`, 'sc<4+3 sc<2+1'],
    ['chains go into nothing', `${four}Row 2: Sc in first st, ch 2, sk 2, sc in last st.`, 'sc<4 ch-2 sp sc<1'],
    ['a group', `${four}Row 2: Sk 1, (dc, ch 1, dc) in next st, sk 1, sc in last st.`, 'dc<3 ch-1 sp dc<3 sc<1'],
    ['an opening chain that counts', `${four}Row 2: Ch 3 (counts as dc), dc in next 3 sts.`, 'dc<4 dc<3 dc<2 dc<1'],
    [
      'the same place again',
      `${four}Row 2: Sc in first 2 sts, sc in same st, sc in last 2 sts.`,
      'sc<4 sc<3 sc<3 sc<2 sc<1',
    ],
    [
      'passes of a repeat',
      '## A\nCh 25.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, *sc2tog, 2 sc in next st; rep from * across.',
      `tch ${Array.from({ length: 8 }, (_, pass) => {
        const last = 24 - 3 * pass
        return `sc<${last}+${last - 1} sc<${last - 2} sc<${last - 2}`
      }).join(' ')}`,
    ],
    [
      'a joined round, not turned',
      '## A\nRnd 1: Ch 1, 3 sc in magic ring, join.\nRnd 2: Ch 1, 2 sc in each st around, join.',
      'tch sc<1 sc<1 sc<2 sc<2 sc<3 sc<3',
    ],
    ['spread evenly', `${four}Row 2: Inc 2 evenly.`, 'sc<4 sc<4 sc<3 sc<2 sc<2 sc<1'],
  ])('%s', (_, text, shown) => {
    expect(fabric(text)).toBe(shown)
  })
})
