import type { writingFindings } from '../../../diagnostic/catalogue/formula/writing.ts'
import type { Samples } from '../../sample.ts'
import { pair } from '../../sample.ts'
import { graded } from './graded.ts'

const endless = (length: number) => `across = 1${' + 1'.repeat(length)}`
const nested = (depth: number) => `(${'('.repeat(depth)}20 + 4${')'.repeat(depth)}) cm`

export const writingSamples: Samples<keyof typeof writingFindings> = {
  'formula-empty': pair('The mat is {{‹›}} wide.', 'The mat is {{30 cm}} wide.'),
  'formula-unreadable': graded('across = 30‹,›5 cm', 'across = 30.5 cm'),
  'formula-too-long': graded(`‹${endless(600)}›`, endless(6)),
  'formula-too-deep': graded(`across = ${nested(65).slice(0, 61)}‹(›${nested(65).slice(62)}`, `across = ${nested(2)}`),
  'operator-missing': graded('motifs = 5\nsts = motifs ‹6›', 'motifs = 5\nsts = motifs * 6'),
  'bracket-open': graded('across = [30, 40 cm‹›', 'across = [30, 40] cm'),
  'text-open': graded('edge = ‹"shells›', 'edge = "shells"'),
  'number-unreadable': graded('across = ‹20/0› in', 'across = 20 1/2 in'),
  'unknown-unit': graded('across = 20 ‹inches›', 'across = 20 in'),
  'statement-unreadable': graded('‹across 30 cm›', 'across = 30 cm'),
  'format-misplaced': graded('motifs = 5 ‹as words›', 'motifs = 5', 'Make {{motifs as words}} motifs.'),
  'fineness-unreadable': pair('It is {{30 cm as in to ‹0›}} wide.', 'It is {{30 cm as in to 1/8}} wide.'),
  'made-unreadable': pair(
    '## Mat\n\nRow 1: Ch 9, sc in 2nd ch from hook and in each ch across.\n\nYou have {{total(‹Row 1›)}} stitches.',
    '## Mat\n\nRow 1: Ch 9, sc in 2nd ch from hook and in each ch across.\n\nYou have {{total("Row 1")}} stitches.',
  ),
}
