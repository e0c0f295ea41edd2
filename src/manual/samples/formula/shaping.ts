import type { shapingFindings } from '../../../diagnostic/catalogue/formula/shaping.ts'
import type { Samples } from '../../sample.ts'
import { graded } from './graded.ts'

export const shapingSamples: Samples<keyof typeof shapingFindings> = {
  'shaping-word': graded('slope = taper(60, 42, 40, ‹"one ends"›)', 'slope = taper(60, 42, 40, "one end")'),
  'shaping-stitch': graded('incs = spaced(4, 40, ‹"sc, ch 1"›)', 'incs = spaced(4, 40, "sc")'),
  'shaping-range': graded(
    'long = [40, 0]\nslope = taper(60, 42, ‹long›)',
    'long = [40, 44]\nslope = taper(60, 42, long)',
  ),
  'shaping-rows': graded('slope = ‹taper(60, 20, [30, 16])›', 'slope = taper(60, 20, [30, 32])'),
  'shaping-stitches': graded('decs = ‹evenly(-[10, 31], 60)›', 'decs = evenly(-[10, 30], 60)'),
  'shaping-odd': graded('slope = ‹taper(43, [60, 61], 40)›', 'slope = taper(43, [59, 61], 40)'),
  'shaping-direction': graded(
    'yoke = ‹yoke_rounds(100, [120, 90], 10, 2)›',
    'yoke = yoke_rounds(100, [120, 140], 10, 2)',
  ),
}
