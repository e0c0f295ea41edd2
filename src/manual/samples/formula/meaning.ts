import type { meaningFindings } from '../../../diagnostic/catalogue/formula/meaning.ts'
import type { Samples } from '../../sample.ts'
import { pair } from '../../sample.ts'
import { graded } from './graded.ts'

const facts = 'title: Mat\nsizes: [S, M]\nswatch: {stitches: 14 per 10 cm, rows: 16 per 10 cm}'
const bodies = 'title: Top\nsizes: [S, M]\nfits: {table: women, sizes: [Small, Medium]}'

export const meaningSamples: Samples<keyof typeof meaningFindings> = {
  'name-unknown': pair(
    '```grading\nacross = 30 cm\n```\n\nThe mat is {{‹acros›}} wide.',
    '```grading\nacross = 30 cm\n```\n\nThe mat is {{across}} wide.',
  ),
  'name-twice': graded('across = 30 cm\n‹across› = 32 cm', 'across = 30 cm\ninner = 32 cm'),
  'name-taken': graded('‹width› = 30 cm', 'across = 30 cm'),
  'name-circle': graded('‹front› = back - 2\nback = front + 2', 'front = 40\nback = front + 2'),
  'function-unknown': graded('sts = ‹stiches›(30 cm) as whole', 'sts = stitches(30 cm) as whole', '', { facts }),
  'function-arguments': graded('widest = ‹if(3 > 2, 40)›', 'widest = if(3 > 2, 40, 30)'),
  'name-in-quotes': graded('bust = body(‹bust›)', 'bust = body("bust")', '', { facts: bodies }),
  'kinds-mix': graded('around = ‹60 cm + 6›', 'around = 60 cm + 6 cm'),
  'kind-wanted': graded('sts = 60\nacross = stitches(‹sts›)', 'sts = 60\nacross = width(sts)', '', { facts }),
  'condition-wanted': graded('sts = 60\nneed ‹sts›', 'sts = 60\nneed sts is even'),
  'value-wanted': graded('sts = 60\nlarge = ‹sts > 50›', 'sts = 60\nneed sts > 50'),
  'format-kind': pair('The mat is {{‹30 cm as g›}} wide.', 'The mat is {{30 cm as in}} wide.'),
}
