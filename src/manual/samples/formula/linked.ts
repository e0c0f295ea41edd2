import type { linkedFindings } from '../../../diagnostic/catalogue/formula/linked.ts'
import type { Samples } from '../../sample.ts'
import { graded } from './graded.ts'

const many = (count: number) => Array.from({ length: count }, (_, index) => `part_${index + 1} ~ 60`).join('\n')

export const linkedSamples: Samples<keyof typeof linkedFindings> = {
  'linked-target-missing': graded('‹front› ~', 'front ~ 40'),
  'linked-target-linked': graded('front ~ 40\nneck ~ ‹2 * front›', 'front ~ 40\nneck ~ 80\nneed neck = 2 * front'),
  'linked-target-large': graded('front ~ ‹4000000›', 'front ~ 40'),
  'linked-too-many': graded(`${many(64)}\n‹part_65 ~ 60›`, many(3)),
  'linked-not-linear': graded(
    'front ~ 40\nback ~ 30\nneed ‹front * back› > 20',
    'front ~ 40\nback ~ 30\nneed front + back > 20',
  ),
  'linked-contradiction': graded('neck ~ 60\nneed ‹2 * neck = 121›', 'neck ~ 60\nneed 2 * neck = 122'),
  'linked-undecided': {
    faulty: { ...graded('‹neck ~ 60›\nneed neck != 60', '').faulty, solver: 'gives up' },
    sound: graded('', 'neck = 61\nneed neck != 60').sound,
  },
  'linked-solver-missing': {
    faulty: { ...graded('‹neck ~ 60›\nneed neck != 60', '').faulty, solver: 'missing' },
    sound: graded('', 'neck = 61\nneed neck != 60').sound,
  },
}
