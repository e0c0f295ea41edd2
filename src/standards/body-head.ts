import type { BodyTable } from './body-table.ts'

export const head: BodyTable = {
  source: {
    publisher: 'Craft Yarn Council',
    title: 'Head circumference chart',
    edition: 'older booklet chart',
    url: 'https://www.craftyarncouncil.com/standards/head-circumference-chart',
    how: 'from memory',
    note: 'From memory. The adult values read like finished hats, not heads: measured means are larger. A draft should take the measured head and subtract ease, or say that the table already contains it.',
  },
  sizes: ['Preemie', 'Baby', 'Toddler', 'Child', 'Woman', 'Man'],
  wearers: ['babies', 'babies', 'children', 'children', 'women', 'men'],
  howToMeasure: {
    head_circumference: 'tape around the forehead and the fullest part of the back of the head, above the ears, snug',
  },
  measures: [
    {
      key: 'head_circumference',
      label: 'Head circumference',
      inches: [12, 14, 16, 18, 20, 22],
      how: 'from memory',
    },
  ],
  uncertain: ['whether the publisher has replaced the chart (a newer one may list Newborn and age groups)'],
}
