import type { materialFindings } from '../../diagnostic/catalogue/materials.ts'
import type { Samples } from '../sample.ts'
import { factPair } from '../sample.ts'

const body = 'A mat.'
const swatch = (stitches: number, marked = '') =>
  `swatch: {in: single crochet, stitches: ${marked}${stitches} per 10 cm${marked === '' ? '' : '›'}}`

export const materialSamples: Samples<keyof typeof materialFindings> = {
  'hook-sizes-disagree': factPair('hooks: [‹H-8 6 mm›]', 'hooks: [H-8 5 mm]', body),
  'yarn-category-disagrees': factPair('yarn: [{category: ‹bulky (4)›}]', 'yarn: [{category: bulky (5)}]', body),
  'gauge-outside-category': factPair(
    `${swatch(18, '‹')}\nyarn: [{category: 4}]`,
    `${swatch(14)}\nyarn: [{category: 4}]`,
    body,
  ),
  'hook-outside-category': factPair(
    'hooks: [‹9 mm›]\nyarn: [{category: 4}]',
    'hooks: [6 mm]\nyarn: [{category: 4}]',
    body,
  ),
}
