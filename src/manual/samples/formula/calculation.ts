import type { calculationFindings } from '../../../diagnostic/catalogue/formula/calculation.ts'
import type { Samples } from '../../sample.ts'
import { pair } from '../../sample.ts'
import { graded } from './graded.ts'

const facts = 'title: Mat\nsizes: [S, M]\nswatch: {stitches: 14 per 10 cm, rows: 16 per 10 cm}'
const row = '## Mat\n\nRow 1: Ch 9, sc in 2nd ch from hook and in each ch across.'
const skein = (weight: string) => `title: Mat\nsizes: [S, M]\nyarn: [{as: main, skein: {${weight}length: 200 m}}]`

export const calculationSamples: Samples<keyof typeof calculationFindings> = {
  'division-by-zero': graded('tucks = [0, 2]\nspacing = ‹24 / tucks›', 'tucks = [1, 2]\nspacing = 24 / tucks'),
  'number-too-large': graded('big = 1000000000000000\nsts = ‹big * big * 10›', 'sts = 1000 * 10'),
  'multiple-unfit': graded(
    'shell = 5 / 2\nsts = 60 as multiple of ‹shell›',
    'shell = 5\nsts = 60 as multiple of shell',
  ),
  'count-not-whole': pair(
    '```grading\nacross = [20, 30] cm\n```\n\n## Mat\n\nCh {{‹stitches(across) + 1›}}.',
    '```grading\nacross = [20, 30] cm\nsts = stitches(across) as whole\n```\n\n## Mat\n\nCh {{sts + 1}}.',
    { facts: facts.replace('14', '14.5') },
  ),
  'need-failed': graded('sts = [60, 60]\nneed ‹sts rises›', 'sts = [60, 66]\nneed sts rises'),
  'made-in-grading': graded('inner = ‹total› - 2', 'inner = 8 - 2', row),
  'made-unknown': pair(
    `${row}\n\nYou have {{‹total("Row 2")›}} stitches.`,
    `${row}\n\nYou have {{total("Row 1")}} stitches.`,
  ),
  'skein-unknown': {
    faulty: { facts: skein(''), body: 'You need {{‹130 g as skeins›}} of yarn.' },
    sound: { facts: skein('weight: 100 g, '), body: 'You need {{130 g as skeins}} of yarn.' },
  },
}
