import type { BodyTable } from './body-table.ts'

export const childHand: BodyTable = {
  source: {
    publisher: 'a retailer; no Craft Yarn Council hand table could be found',
    title: 'Children’s gloves by age',
    edition: 'undated page',
    url: null,
    how: 'seen',
    note: 'Not a standard. Measure around the palm above the thumb, without the thumb, and from the base of the hand to the tip of the middle finger.',
  },
  sizes: ['0-12 months', '1-2 years', '2-3 years', '4-6 years', '6-8 years', '8-10 years', '10-12 years'],
  wearers: ['babies', 'children', 'children', 'children', 'children', 'children', 'children'],
  howToMeasure: {},
  measures: [
    {
      key: 'hand_circumference',
      label: 'Hand circumference',
      inches: [
        [4, 4.5],
        [4.5, 5],
        [5, 5.5],
        [5.5, 6],
        [6, 6.5],
        [6.5, 7],
        [7, 7.5],
      ],
      how: 'seen',
    },
    {
      key: 'hand_length',
      label: 'Hand length',
      inches: [
        [2.5, 3],
        [3, 3.5],
        [3.5, 4],
        [4, 4.5],
        [4.5, 5],
        [5, 5.5],
        [5.5, 6],
      ],
      how: 'seen',
    },
  ],
  uncertain: [],
}
