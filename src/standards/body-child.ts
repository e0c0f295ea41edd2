import type { BodyTable } from './body-table.ts'
import { howToMeasure } from './how-to-measure.ts'

export const child: BodyTable = {
  source: {
    publisher: 'Craft Yarn Council',
    title: 'Standard body measurements: Child and Youth',
    edition: 'web table',
    url: 'https://www.craftyarncouncil.com/standards/child-youth-sizes',
    how: 'from memory',
    note: "Body measurements, no ease. The publisher's own page could not be read; the table is from memory, with the rows marked seen checked against independent copies. Five rows (back waist, cross back, arm length, upper arm, armhole depth) agree number for number with the designer table at crochetkitten.com, which says that it started from the CYC table.",
  },
  sizes: ['2', '4', '6', '8', '10', '12', '14', '16'],
  wearers: ['children', 'children', 'children', 'children', 'children', 'children', 'children', 'children'],
  howToMeasure,
  measures: [
    {
      key: 'chest',
      label: 'Chest',
      inches: [21, 23, 25, 26.5, 28, 30, 31.5, 32.5],
      how: 'seen',
      note: 'Inches for 2 to 10 seen in three Caron patterns, which print 53.5 and 67.5 cm where CYC prints 53 and 67; 12 to 16 from memory.',
    },
    {
      key: 'center_back_neck_to_wrist',
      label: 'Center back neck-to-wrist',
      inches: [18, 19.5, 20.5, 22, 24, 26, 27, 28],
      how: 'from memory',
    },
    {
      key: 'back_waist_length',
      label: 'Back waist length',
      inches: [8.5, 9.5, 10.5, 12.5, 14, 15, 15.5, 16],
      how: 'seen',
    },
    {
      key: 'cross_back',
      label: 'Cross back (shoulder to shoulder)',
      inches: [9.25, 9.75, 10.25, 10.75, 11.25, 12, 12.25, 13],
      how: 'seen',
    },
    {
      key: 'arm_length_to_underarm',
      label: 'Arm length to underarm',
      inches: [8.5, 10.5, 11.5, 12.5, 13.5, 15, 16, 16.5],
      how: 'seen',
    },
    {
      key: 'upper_arm',
      label: 'Upper arm',
      inches: [7, 7.5, 8, 8.5, 8.75, 9, 9.25, 9.5],
      how: 'seen',
    },
    {
      key: 'armhole_depth',
      label: 'Armhole depth',
      inches: [4.25, 4.75, 5, 5.5, 6, 6.5, 7, 7.5],
      how: 'seen',
    },
    {
      key: 'waist',
      label: 'Waist',
      inches: [21, 21.5, 22.5, 23.5, 24.5, 25, 26.5, 27.5],
      how: 'from memory',
    },
    {
      key: 'hip',
      label: 'Hip',
      inches: [22, 23.5, 25, 28, 29.5, 31.5, 33, 35.5],
      how: 'from memory',
    },
  ],
  uncertain: [
    'where the publisher draws the line between Child and Youth (10 or 12)',
    'waist, hip and centre-back rows: memory only',
  ],
}
