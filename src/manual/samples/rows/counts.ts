import type { countFindings } from '../../../diagnostic/catalogue/rows/counts.ts'
import type { Samples } from '../../sample.ts'
import { onMat, plain } from './mat.ts'

export const countSamples: Samples<keyof typeof countFindings> = {
  'count-mismatch': onMat(
    ['Row 2: Ch 1, 2 sc in first st, sc in each st across, turn. ‹(20 sc)›'],
    ['Row 2: Ch 1, 2 sc in first st, sc in each st across, turn. (21 sc)'],
  ),
  'count-unread': onMat(
    ['Row 2: Ch 1, sc in each st across, turn. ‹(5 blocks)›'],
    ['Row 2: Ch 1, sc in each st across, turn. (20 sc)'],
  ),
  'kind-counted-twice': onMat(
    ['Row 2: Ch 1, *sc in next 2 sts, hdc in next 2 sts; rep from * across, turn. ‹(10 sc, 10 sc)›'],
    ['Row 2: Ch 1, *sc in next 2 sts, hdc in next 2 sts; rep from * across, turn. (10 sc, 10 hdc)'],
    { facts: 'title: Mat\nsizes: [One size]' },
  ),
  'count-of-other-row': onMat(
    [plain(2), 'Rows 3–6: Ch 1, sc in each st across, turn. 20 sc at ‹end of Row 8›.'],
    [plain(2), 'Rows 3–6: Ch 1, sc in each st across, turn. 20 sc at end of Row 6.'],
  ),
}
