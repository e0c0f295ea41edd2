import type { sizesFindings } from '../../../diagnostic/catalogue/formula/sizes.ts'
import type { Samples } from '../../sample.ts'
import { graded } from './graded.ts'

export const sizesSamples: Samples<keyof typeof sizesFindings> = {
  'list-length': graded('across = ‹[30, 36, 42]› cm', 'across = [30, 36] cm'),
  'list-in-list': graded('inner = [20, 24]\nouter = [‹inner›, 30]', 'inner = [20, 24]\nouter = inner + 6'),
  'size-unknown': graded('across = {S: 30 cm, ‹L›: 36 cm}', 'across = {S: 30 cm, M: 36 cm}'),
  'size-twice': graded('across = {S: 30 cm, ‹S›: 33 cm, M: 36 cm}', 'across = {S: 30 cm, M: 36 cm}'),
  'sizes-missing': graded('across = ‹{S: 30 cm}›', 'across = {S: 30 cm, M: none}'),
}
