import type { labelFindings } from '../../../diagnostic/catalogue/rows/labels.ts'
import type { Samples } from '../../sample.ts'
import { lines, onMat, plain } from './mat.ts'

const even = 'Ch 1, sc in each st across, turn. (20 sc)'

export const labelSamples: Samples<keyof typeof labelFindings> = {
  'size-list-length': lines(
    ['## Mat', 'Foundation: Ch ‹21 (25, 29)›.', 'Row 1: Sc in 2nd ch from hook and in each ch across, turn.'],
    ['## Mat', 'Foundation: Ch 21 (25).', 'Row 1: Sc in 2nd ch from hook and in each ch across, turn.'],
  ),
  'row-label-twice': onMat([plain(2), plain(2).replace('Row 2:', '‹Row 2:›')], [plain(2), plain(3)]),
  'row-number-gap': onMat([plain(2), plain(4).replace('Row 4:', '‹Row 4:›')], [plain(2), plain(3)]),
  'first-row-number': lines(
    ['## Strap', 'Foundation: Ch 9.', '‹Row 2:› Sc in 2nd ch from hook and in each ch across, turn. (8 sc)'],
    ['## Strap', 'Foundation: Ch 9.', 'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)'],
  ),
  'row-named-twice': onMat(
    [plain(2), plain(3), 'Rows 4–9: ‹Rep Rows 3 and 3.›'],
    [plain(2), plain(3), 'Rows 4–9: Rep Rows 2 and 3.'],
  ),
  'range-length': onMat(
    ['Rows 2–6 ‹(6 rows)›: Ch 1, sc in each st across, turn. (20 sc)'],
    ['Rows 2–7 (6 rows): Ch 1, sc in each st across, turn. (20 sc)'],
  ),
  'range-backwards': onMat(
    ['‹Rows 8–2:› Ch 1, sc in each st across, turn. (20 sc)'],
    ['Rows 2–8: Ch 1, sc in each st across, turn. (20 sc)'],
  ),
  'range-too-long': onMat(
    ['‹Rows 2–9999: Ch 1, sc in each st across, turn. (20 sc)›'],
    ['Rows 2–99: Ch 1, sc in each st across, turn. (20 sc)'],
  ),
  'side-out-of-step': onMat(
    [plain(2).replace(':', ' (RS):'), plain(3), plain(4).replace('Row 4:', '‹Row 4 (WS):›')],
    [plain(2).replace(':', ' (RS):'), plain(3), plain(4).replace(':', ' (RS):')],
  ),
  'row-parity-differs': onMat(
    [plain(2).replace(':', ' (RS):'), `‹Rows 3–7 (8):› ${even}`, `Row 8 (9) (RS): ${even}`],
    [plain(2).replace(':', ' (RS):'), `Rows 3–7 (9): ${even}`, `Row 8 (10) (RS): ${even}`],
  ),
  'ends-on-other-side': onMat(
    [plain(2).replace(':', ' (RS):'), `‹Rows 3–8:› ${even.replace(' turn.', ' turn, ending with a WS row.')}`],
    [plain(2).replace(':', ' (RS):'), `Rows 3–9: ${even.replace(' turn.', ' turn, ending with a WS row.')}`],
  ),
}
