import type { BodyTable } from './body-table.ts'
import { howToMeasure } from './how-to-measure.ts'

export const baby: BodyTable = {
  source: {
    publisher: 'Craft Yarn Council',
    title: 'Standard body measurements: Baby',
    edition: 'web table',
    url: 'https://www.craftyarncouncil.com/standards/baby-size',
    how: 'from memory',
    note: "Body measurements, no ease. The publisher's own page could not be read; the table is from memory, with the rows marked seen checked against independent copies. Only two chest values could be checked. 24 months agrees with child size 2 in back waist, arm length and armhole depth, as it should.",
  },
  sizes: ['3 months', '6 months', '12 months', '18 months', '24 months'],
  wearers: ['babies', 'babies', 'babies', 'babies', 'babies'],
  howToMeasure,
  measures: [
    {
      key: 'chest',
      label: 'Chest',
      inches: [16, 17, 18, 19, 20],
      how: 'from memory',
      note: '6 months 17 in [43 cm] and 24 months 20 in seen in one Bernat pattern, which gives 19 in for 12 months.',
    },
    {
      key: 'center_back_neck_to_wrist',
      label: 'Center back neck-to-wrist',
      inches: [10.5, 11.5, 12.5, 14, 18],
      how: 'from memory',
      note: 'The 4-inch step at 24 months is in the published table as remembered.',
    },
    {
      key: 'back_waist_length',
      label: 'Back waist length',
      inches: [6, 7, 7.5, 8, 8.5],
      how: 'from memory',
    },
    {
      key: 'cross_back',
      label: 'Cross back (shoulder to shoulder)',
      inches: [7.25, 7.75, 8.25, 8.5, 8.75],
      how: 'from memory',
    },
    {
      key: 'arm_length_to_underarm',
      label: 'Arm length to underarm',
      inches: [6, 6.5, 7.5, 8, 8.5],
      how: 'from memory',
    },
    {
      key: 'upper_arm',
      label: 'Upper arm',
      inches: [5.5, 6, 6.5, 7, 7.5],
      how: 'from memory',
    },
    {
      key: 'armhole_depth',
      label: 'Armhole depth',
      inches: [3.25, 3.5, 3.75, 4, 4.25],
      how: 'from memory',
    },
    {
      key: 'waist',
      label: 'Waist',
      inches: [18, 19, 20, 20.5, 21],
      how: 'from memory',
    },
    {
      key: 'hip',
      label: 'Hip',
      inches: [19, 20, 20, 21, 22],
      how: 'from memory',
    },
  ],
  uncertain: ['the whole table is memory only apart from two chest values'],
}
