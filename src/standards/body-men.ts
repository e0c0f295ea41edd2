import type { BodyTable } from './body-table.ts'
import { howToMeasure } from './how-to-measure.ts'

export const men: BodyTable = {
  source: {
    publisher: 'Craft Yarn Council',
    title: 'Standard body measurements: Man',
    edition: 'table Small to 2X-Large',
    url: 'https://www.craftyarncouncil.com/standards/man-size',
    how: 'from memory',
    note: "Body measurements, no ease. The publisher's own page could not be read; the table is from memory, with the rows marked seen checked against independent copies. A teaching article confirms that the men's table ran from S to 2XL; Knitty's rules of winter 2019 ask for S to 5X by 'the CYC chart', so a longer, newer table probably exists. Its 3X to 5X rows are unknown here and are left out rather than invented.",
  },
  sizes: ['Small', 'Medium', 'Large', 'X-Large', '2X-Large'],
  wearers: ['men', 'men', 'men', 'men', 'men-2x'],
  howToMeasure,
  measures: [
    {
      key: 'chest',
      label: 'Chest',
      inches: [
        [34, 36],
        [38, 40],
        [42, 44],
        [46, 48],
        [50, 52],
      ],
      how: 'from memory',
    },
    {
      key: 'center_back_neck_to_wrist',
      label: 'Center back neck-to-wrist',
      inches: [
        [32, 32.5],
        [33, 33.5],
        [34, 34.5],
        [35, 35.5],
        [36, 36.5],
      ],
      how: 'from memory',
    },
    {
      key: 'back_hip_length',
      label: 'Back hip length',
      inches: [
        [25, 25.5],
        [26.5, 26.75],
        [27, 27.25],
        [27.5, 27.75],
        [28, 28.5],
      ],
      how: 'from memory',
    },
    {
      key: 'cross_back',
      label: 'Cross back (shoulder to shoulder)',
      inches: [
        [15.5, 16],
        [16.5, 17],
        [17.5, 18],
        [18, 18.5],
        [18.5, 19],
      ],
      how: 'from memory',
    },
    {
      key: 'arm_length_to_underarm',
      label: 'Arm length to underarm',
      inches: [18, 18.5, 19.5, 20, 20.5],
      how: 'from memory',
    },
    {
      key: 'upper_arm',
      label: 'Upper arm',
      inches: [12, 13, 15, 16, 17],
      how: 'from memory',
    },
    {
      key: 'armhole_depth',
      label: 'Armhole depth',
      inches: [
        [8.5, 9],
        [9, 9.5],
        [9.5, 10],
        [10, 10.5],
        [10.5, 11],
      ],
      how: 'from memory',
    },
    {
      key: 'waist',
      label: 'Waist',
      inches: [
        [28, 30],
        [32, 34],
        [36, 38],
        [42, 44],
        [46, 48],
      ],
      how: 'from memory',
    },
    {
      key: 'hip',
      label: 'Hip',
      inches: [
        [35, 37],
        [39, 41],
        [43, 45],
        [47, 49],
        [51, 53],
      ],
      how: 'from memory',
    },
  ],
  uncertain: [
    'no row could be checked',
    'the waist jumps 6 in between Large and X-Large in the table as remembered',
    'sizes 3X to 5X missing',
  ],
}
