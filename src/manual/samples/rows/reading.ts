import type { readingFindings } from '../../../diagnostic/catalogue/rows/reading.ts'
import type { Samples } from '../../sample.ts'
import { lines, onMat } from './mat.ts'

const mat = ['## Mat', 'Foundation: Ch 22.', 'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (21 sc)']
const loops = 'Row 2: Ch 1, sc in next 10 sts, lo in next st, sc in next 10 sts, turn.'
const shells = 'Row 2: Ch 1, sc in first 10 sts, puff in next st, sc in each st across, turn.'

export const readingSamples: Samples<keyof typeof readingFindings> = {
  'row-unread': onMat(
    ['Row 2: Ch 1, sc in next 10 sts, ‹shel in next st›, sc in next 9 sts, turn.'],
    ['Row 2: Ch 1, sc in next 10 sts, 5 dc in next st, sc in next 9 sts, turn.'],
  ),
  'word-of-other-terms': onMat(
    ['Row 2: Ch 1, sc in next 10 sts, ‹htr› in next 10 sts, turn.'],
    ['Row 2: Ch 1, sc in next 10 sts, hdc in next 10 sts, turn.'],
  ),
  'repeat-without-mark': onMat(
    ['Row 2: Ch 1, sc in next st, ch 1, sk next st; ‹rep from * across›, turn.'],
    ['Row 2: Ch 1, *sc in next st, ch 1, sk next st; rep from * across, turn.'],
  ),
  'special-unread': lines(
    ['## Special stitches', '- ‹Loopy (lo): let the yarn run out a little.›', ...mat, loops],
    ['## Special stitches', '- Loopy (lo): (sc, ch 5, sc) in same st.', ...mat, loops],
  ),
  'special-undefined': lines(
    [...mat, shells.replace('puff in next st', '‹puff in next st›')],
    [
      '## Special stitches',
      '- Puff: (yarn over, insert hook in st, pull up a loop) 3 times, yarn over, pull through all loops, counts as 1 st.',
      ...mat,
      shells,
    ],
  ),
}
