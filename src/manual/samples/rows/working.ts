import type { workingFindings } from '../../../diagnostic/catalogue/rows/working.ts'
import type { Samples } from '../../sample.ts'
import { lines, onMat } from './mat.ts'

const hat = (rows: readonly string[]) => ['## Hat', 'Rnd 1: 6 sc in magic ring. (6 sc)', ...rows]

export const workingSamples: Samples<keyof typeof workingFindings> = {
  'repeat-does-not-come-out': onMat(
    ['Row 2: Ch 1, *sc in next 2 sts, 2 sc in next st; ‹rep from * across›, turn.'],
    ['Row 2: Ch 1, *sc in next 3 sts, 2 sc in next st; rep from * across, turn.'],
  ),
  'bare-repeat-left': onMat(
    ['Row 2: Ch 1, sc in next st, 2 sc in next st, sc in next st, ‹repeat›, turn.'],
    ['Row 2: Ch 1, *sc in next 3 sts, 2 sc in next st; repeat from * across, turn.'],
  ),
  'too-few-stitches': onMat(
    ['Row 2: Ch 1, sc in next 18 sts, ‹hdc in next 3 sts›, turn.'],
    ['Row 2: Ch 1, sc in next 18 sts, hdc in next 2 sts, turn.'],
  ),
  'no-such-place': onMat(
    [
      'Row 2: Ch 1, sc in first st, *ch 3, sk next st, sc in next st; rep from * to last st, sc in last st, turn.',
      'Row 3: Ch 1, ‹3 sc in each ch-2 sp across›, turn.',
    ],
    [
      'Row 2: Ch 1, sc in first st, *ch 3, sk next st, sc in next st; rep from * to last st, sc in last st, turn.',
      'Row 3: Ch 1, 3 sc in each ch-3 sp across, turn.',
    ],
  ),
  'nothing-below': lines(
    ['## Strap', 'Row 1: Ch 1, ‹sc in each st across›, turn.'],
    ['## Strap', 'Foundation: Ch 9.', 'Row 1: Sc in 2nd ch from hook and in each ch across, turn.'],
  ),
  'base-unknown': lines(
    ['## Border', 'Rnd 1: ‹Join yarn with sl st in any corner›, sc in each st around.'],
    [
      '## Border',
      'Foundation: Ch 60, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around.',
    ],
  ),
  'repeat-goes-nowhere': onMat(
    ['Row 2: Ch 1, sc in first st, *ch 1; ‹rep from * across›, turn.'],
    ['Row 2: Ch 1, sc in first st, *ch 1, sc in next st; rep from * across, turn.'],
  ),
  'row-too-long': lines(
    hat(['Rnd 2: ‹22222 sc in each st around›. (12 sc)']),
    hat(['Rnd 2: 2 sc in each st around. (12 sc)']),
  ),
  'count-below-zero': onMat(
    [
      '```grading\nside = [9, 12]\n```',
      'Row 2: Ch 1, sc in next 10 sts, ‹sk {{10 - side}} sts›, sc in each st across, turn.',
    ],
    [
      '```grading\nside = [9, 10]\n```',
      'Row 2: Ch 1, sc in next 10 sts, sk {{10 - side}} sts, sc in each st across, turn.',
    ],
  ),
  'stitches-left': onMat(
    ['Row 2: ‹Ch 1, sc in next 18 sts, turn.› (18 sc)'],
    ['Row 2: Ch 1, sc in next 18 sts, leave remaining sts unworked, turn. (18 sc)'],
  ),
  'left-otherwise': onMat(
    ['Row 2: ‹Ch 1, sc in each st to last 6 sts, leave last 7 sts unworked, turn.›'],
    ['Row 2: Ch 1, sc in each st to last 6 sts, leave last 6 sts unworked, turn.'],
  ),
}
