import type { BodyTable } from './body-table.ts'

export const foot: BodyTable = {
  source: {
    publisher: 'Craft Yarn Council',
    title: 'Foot size chart (socks)',
    edition: 'web chart',
    url: 'https://www.craftyarncouncil.com/standards/foot-size',
    how: 'from memory',
    note: 'From memory, low confidence; that CYC publishes a foot chart is confirmed by two blogs. Shoe sizes are American.',
  },
  sizes: [
    'Child 0-4',
    'Child 4-8',
    'Child 7-11',
    'Child 10-2',
    'Child 2-6',
    'Woman 3-6',
    'Woman 6-9',
    'Woman 8-12',
    'Man 6-8',
    'Man 8½-10',
    'Man 10½-12',
    'Man 12½-14',
  ],
  howToMeasure: {},
  measures: [
    {
      key: 'foot_circumference',
      label: 'Foot circumference',
      inches: [4.5, 5.5, 6, 6.5, 7, 7, 8, 9, 7, 8, 9, 10],
      how: 'from memory',
    },
    {
      key: 'sock_height',
      label: 'Sock height',
      inches: [2.5, 3.5, 4.5, 5.5, 6.5, 6.5, 7, 7.5, 7, 7.5, 8, 8.5],
      how: 'from memory',
    },
    {
      key: 'total_foot_length',
      label: 'Total foot length',
      inches: [4, 5, 6, 7.5, 8, 9, 10, 11, 9.5, 10.5, 11, 11.5],
      how: 'from memory',
    },
  ],
  uncertain: [],
}
