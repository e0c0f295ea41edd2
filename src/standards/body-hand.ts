import type { BodyTable } from './body-table.ts'

export const hand: BodyTable = {
  source: {
    publisher: 'several; no Craft Yarn Council hand table could be found',
    title: 'Hand circumference by wearer',
    edition: 'undated pages',
    url: null,
    how: 'seen',
    note: "Not a standard. One designer's table, for want of one; children's by age are in a table of their own. Measure around the palm above the thumb, without the thumb, and from the base of the hand to the tip of the middle finger. Values from: Purls and Pixels, knitwear size guide (a designer who says that she generally follows CYC).",
  },
  sizes: ['Baby 0-3 months', 'Toddler 6 months-3 years', 'Child 3-14 years', 'Woman', 'Man'],
  wearers: ['babies', 'children', 'children', 'women', 'men'],
  howToMeasure: {},
  measures: [
    {
      key: 'hand_circumference',
      label: 'Hand circumference',
      inches: [
        [3, 4],
        [4, 5.5],
        [5.5, 6],
        [6, 7.5],
        [7.5, 9],
      ],
      how: 'seen',
    },
  ],
  uncertain: [],
}
