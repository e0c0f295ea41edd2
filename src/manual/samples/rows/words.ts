import type { contradictionFindings } from '../../../diagnostic/catalogue/rows/words.ts'
import type { Samples } from '../../sample.ts'
import { lines, onMat } from './mat.ts'

const tall = [
  '## Scarf',
  'Foundation: Ch 22.',
  'Row 1: Dc in 4th ch from hook (3 skipped ch count as dc) and in each ch across, turn. (20 dc)',
]
const opened = (row: number, chains: number) => `Row ${row}: Ch ${chains}, sc in each st across, turn. (20 sc)`

export const contradictionSamples: Samples<keyof typeof contradictionFindings> = {
  'unlike-other-rows': lines(
    ['## Scarf', 'Foundation: Ch 23.', 'Row 1: Dc in 4th ch from hook and in each ch across, turn. ‹(20 dc)›'],
    ['## Scarf', 'Foundation: Ch 22.', 'Row 1: Dc in 4th ch from hook and in each ch across, turn. (20 dc)'],
  ),
  'opening-unlike': onMat(
    [opened(2, 1), opened(3, 1), opened(4, 2).replace('Ch 2', '‹Ch 2›'), opened(5, 1)],
    [opened(2, 1), opened(3, 1), opened(4, 1), opened(5, 1)],
  ),
  'ordinal-ending': lines(
    ['## Strap', 'Foundation: Ch 9.', 'Row 1: Sc in ‹3nd› ch from hook and in each ch across, turn.'],
    ['## Strap', 'Foundation: Ch 9.', 'Row 1: Sc in 2nd ch from hook and in each ch across, turn.'],
  ),
  'chain-sum': lines(
    [...tall, 'Row 2: ‹Ch 3 (counts as dc and ch 1)›, sk next dc, dc in next dc, leave remaining sts unworked, turn.'],
    [...tall, 'Row 2: Ch 4 (counts as dc and ch 1), sk next dc, dc in next dc, leave remaining sts unworked, turn.'],
  ),
  'chain-named': lines(
    [...tall, 'Row 2: Ch 3 (counts as dc), dc in next 18 dc, dc in ‹top of ch-2›, turn. (20 dc)'],
    [...tall, 'Row 2: Ch 3 (counts as dc), dc in next 18 dc, dc in top of ch-3, turn. (20 dc)'],
  ),
  'together-over': onMat(
    ['Row 2: Ch 1, ‹sc3tog over first 2› sts, sc in each st across, turn.'],
    ['Row 2: Ch 1, sc2tog over first 2 sts, sc in each st across, turn.'],
  ),
}
