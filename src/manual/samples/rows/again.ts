import type { repeatFindings } from '../../../diagnostic/catalogue/rows/again.ts'
import type { Samples } from '../../sample.ts'
import { onMat, plain } from './mat.ts'

const swatch = (rows: string) => ({ facts: `title: Mat\nsizes: [S, M]\nswatch: {stitches: 14 per 10 cm${rows}}` })
const untilLong = 'Rep Row 2 until piece measures 20 cm.'
const increases = 'Row 2 (inc row): Ch 1, 2 sc in first st, sc in each st across, turn. (21 sc)'

export const repeatSamples: Samples<keyof typeof repeatFindings> = {
  'unknown-row-reference': onMat([plain(2), 'Rows 3–8: ‹Rep Rows 4 and 5.›'], [plain(2), 'Rows 3–8: Rep Row 2.']),
  'unknown-row-name': onMat([increases, 'Row 3: ‹Rep dec row.›'], [increases, 'Row 3: Rep inc row.']),
  'repeats-foundation-row': onMat(['Rows 2–9: ‹Rep Row 1.›'], [plain(2), 'Rows 3–9: Rep Row 2.']),
  'repeated-rows-differ': onMat(
    [plain(2), plain(3), 'Rows 4–8: ‹Rep Rows 2 and 3 three times.›'],
    [plain(2), plain(3), 'Rows 4–9: Rep Rows 2 and 3 three times.'],
  ),
  'row-gauge-missing': {
    faulty: onMat([plain(2), `‹${untilLong}›`], [], swatch('')).faulty,
    sound: onMat([], [plain(2), untilLong], swatch(', rows: 16 per 10 cm')).sound,
  },
  'shaping-rows-differ': onMat(
    ['Rows 2–6: ‹Dec 1 st at each end of every 2nd row twice.› (16 sc)'],
    ['Rows 2–5: Dec 1 st at each end of every 2nd row twice. (16 sc)'],
  ),
  'shaping-never-there': onMat(
    ['‹Dec 1 st at each end of every row until 13 sts rem.›'],
    ['Dec 1 st at each end of every row until 12 sts rem.'],
  ),
}
