import { always } from '../../src/measure/index.ts'
import type { Segment } from '../../src/measure/segment.ts'
import type { Block, Inline, RowBlock } from '../../src/pattern/node.ts'
import type { MeasureLine, Pattern, ValueNode } from '../../src/pattern/pattern.ts'

/** An invented pattern of an invented studio, in as many sizes and rows as a test wants. */

export const studio = { name: 'Low Water Studio', address: 'hello@lowwater.example' }

let values = 0

/** `60 (72, 84)` with the same pieces that a resolved placeholder has. */
export function value(bySize: readonly (string | number)[], unit = ''): ValueNode {
  values += 1
  const id = `v${values}`
  const tail: Segment[] = unit === '' ? [] : [{ text: unit, show: 'always' }]
  const [first = '', ...others] = bySize
  if (others.every((other) => other === first)) {
    return { type: 'value', id, segments: [{ text: String(first), show: 'always' }, ...tail] }
  }
  const rest = others.flatMap((text, index): Segment[] => [
    { text: index === 0 ? ' (' : ', ', show: 'columns' },
    { text: String(text), show: index + 1 },
  ])
  return {
    type: 'value',
    id,
    segments: [{ text: String(first), show: 0 }, ...rest, { text: ')', show: 'columns' }, ...tail],
  }
}

export const text = (text: string): Inline => ({ type: 'text', text })
export const strong = (...children: Inline[]): Inline => ({ type: 'strong', children })
export const emphasis = (...children: Inline[]): Inline => ({ type: 'emphasis', children })

/** Inlines from a mixture of words and nodes. */
export function inlines(...parts: (string | Inline)[]): Inline[] {
  return parts.map((part) => (typeof part === 'string' ? text(part) : part))
}

export const paragraph = (...parts: (string | Inline)[]): Block => ({ type: 'paragraph', children: inlines(...parts) })

export function heading(words: string, depth = 2): Block {
  return { type: 'heading', depth, id: words.toLowerCase(), children: inlines(words) }
}

interface RowParts {
  readonly steps: readonly (string | Inline)[]
  readonly stated?: readonly (string | Inline)[]
  readonly rows?: number
  readonly only?: readonly number[]
}

export function row(label: string | Inline[], { steps, stated = [], rows = 1, only }: RowParts): RowBlock {
  values += 1
  return {
    type: 'row',
    id: `row-${values}`,
    label: typeof label === 'string' ? inlines(label) : label,
    steps: inlines(...steps),
    stated: inlines(...stated),
    entries: [0, rows],
    times: rows,
    moment: null,
    only: only ?? null,
  }
}

function measure(label: string, unit: string, cells: readonly string[]): MeasureLine {
  return { label, value: value(cells, unit), cells: cells.map((cell) => [always(`${cell}${unit}`)]) }
}

export const threeSizes = ['Child', 'Adult S', 'Adult L']

/** `Size 1` … for tests of many sizes. */
export const manySizes = (count: number): string[] => Array.from({ length: count }, (_, index) => `Size ${index + 1}`)

/** One value for each of `count` sizes, `step` apart. */
export const ramp = (count: number, from: number, step: number): number[] =>
  Array.from({ length: count }, (_, index) => from + index * step)

/** The body of the invented cowl, in every kind of block. */
export function tideLineBody(count: number): Block[] {
  const stitches = (): ValueNode => value(ramp(count, 60, 12))
  const shells = (): ValueNode => value(ramp(count, 10, 2))
  return [
    heading('Special stitches'),
    {
      type: 'list',
      ordered: false,
      start: 1,
      items: [
        [paragraph(strong(text('Shell:')), ' 5 dc in same st.')],
        [paragraph(strong(text('Wave:')), ' sc in next st, hdc in next st, dc in next st, hdc in next st.')],
      ],
    },
    heading('Cowl'),
    paragraph(
      'The cowl is worked in joined rounds from the ',
      emphasis(text('lower edge')),
      ' upwards. Measure often.',
    ),
    row('Foundation:', { steps: ['Ch ', stitches(), ', join with sl st in first ch to form a ring.'] }),
    row('Rnd 1 (RS):', {
      steps: ['Ch 1, sc in each ch around, join with sl st in first sc.'],
      stated: ['(', stitches(), ' sc)'],
    }),
    row('Rnd 2:', {
      steps: [
        'Ch 1, sc in first st, *sk 2 sts, shell in next st, sk 2 sts, sc in next st; rep from * ',
        value(ramp(count, 8, 2)),
        ' more times, sk 2 sts, shell in next st, sk 2 sts, join with sl st in first sc.',
      ],
      stated: ['(', shells(), ' shells, ', shells(), ' sc)'],
    }),
    row('Rnd 3:', {
      steps: [
        'Ch 3 (counts as dc), 2 dc in same st, *sk 2 dc, sc in next dc, sk 2 dc, shell in next sc; rep from * to last shell, sk 2 dc, sc in next dc, sk 2 dc, 2 dc in same st as beg ch-3, join with sl st in top of beg ch-3.',
      ],
    }),
    row(inlines('Rnds 4–', value(ramp(count, 15, 2)), ':'), { steps: ['Rep Rnds 2 and 3.'], rows: 14 }),
    {
      type: 'only',
      sizes: [count - 1],
      children: [paragraph('Work one more round.'), row('Next rnd:', { steps: ['Rep Rnd 2 once more.'] })],
    },
    row('Edging rnd 1:', {
      steps: ['Ch 1, sc in each st around. Fasten off.'],
      stated: ['(', stitches(), ')'],
      only: [0],
    }),
    heading('Blocking', 3),
    paragraph(
      'Block to ',
      value(ramp(count, 24, 2), ' cm'),
      ' (',
      value(ramp(count, 9, 1).map((n) => `${n}⅛`)),
      ' in).',
    ),
    {
      type: 'table',
      align: ['left', 'right', 'right'],
      head: [inlines('Stage'), inlines('Stitches'), inlines('Shells')],
      rows: [
        [inlines('Lower edge'), inlines(stitches()), inlines('–')],
        [inlines('Body'), inlines(stitches()), inlines(shells())],
      ],
    },
    { type: 'quote', children: [paragraph('Wool relaxes when wet: measure again once it is dry.')] },
    { type: 'rule' },
    { type: 'codeBlock', text: 'x o x o\n o x o x\n' },
    paragraph(
      { type: 'onlyInline', sizes: [0], children: inlines('skip the last round. ') },
      { type: 'delete', children: inlines('Old words') },
      ', ',
      { type: 'code', text: 'ch-2 sp' },
      { type: 'break' },
      'See ',
      { type: 'link', href: 'https://lowwater.example/care', children: inlines('how to wash wool') },
      '.',
      { type: 'image', src: 'wave.png', alt: 'The wave edge from close by' },
    ),
  ]
}

const moment = { place: 'Rnd 2', time: '8:13', seconds: 493, href: 'https://lowwater.example/film#t=493' }

/** The invented cowl for these sizes. */
export function tideLine(sizes: readonly string[] = threeSizes, changes: Partial<Pattern> = {}): Pattern {
  values = 0
  const count = sizes.length
  return {
    slug: 'tide-line',
    title: 'Tide Line',
    summary: 'A deep cowl in shells that rise and fall like the edge of the tide, worked in joined rounds.',
    lead: [],
    terms: 'us',
    kinds: ['cowl'],
    skill: 'easy',
    published: '2026-03-14',
    edition: '1.1',
    changes: [{ edition: '1.1', date: '2026-05-02', note: 'Rnd 3, Adult L: shell count corrected.' }],
    sizes,
    fit: null,
    wearers: ['women'],
    measures: [],
    fits: [measure('To fit head', ' cm', ramp(count, 50, 2).map(String))],
    finished: [
      measure('Circumference', ' cm', ramp(count, 52, 8).map(String)),
      measure(
        'Depth',
        ' cm',
        ramp(count, 24, 2).map((n) => `${n}.5`),
      ),
    ],
    materials: {
      yarn: [
        {
          as: 'main',
          category: 5,
          description: [always('Bulky (5) wool blend, 100 g = 110 m (120 yd) a skein')],
          amount: value(ramp(count, 120, 45), ' g'),
        },
      ],
      yarnNote: null,
      hooks: ['6.5 mm (US K-10½)'],
      notions: ['Yarn needle', 'Stitch marker'],
    },
    gauge: [
      { name: null, text: [always('12 stitches and 8 rows = 10 cm (4 in) in shell pattern with a 6.5 mm hook')] },
    ],
    readings: [],
    pieces: [],
    abbreviations: [
      { abbreviation: 'beg', meaning: 'beginning', special: false, other: null },
      { abbreviation: 'ch', meaning: 'chain', special: false, other: null },
      { abbreviation: 'dc', meaning: 'double crochet', special: false, other: null },
      { abbreviation: 'hdc', meaning: 'half double crochet', special: false, other: null },
      { abbreviation: 'rep', meaning: 'repeat', special: false, other: null },
      { abbreviation: 'RS', meaning: 'right side', special: false, other: null },
      { abbreviation: 'sc', meaning: 'single crochet', special: false, other: null },
      { abbreviation: 'sl st', meaning: 'slip stitch', special: false, other: null },
      { abbreviation: 'st(s)', meaning: 'stitch(es)', special: false, other: null },
    ],
    cautions: [
      {
        text: 'Cords can catch. Follow the rules that apply where you live.',
        source: 'A standard (2014)',
        sizes: null,
      },
    ],
    cover: null,
    film: { url: 'https://lowwater.example/film', moments: [moment] },
    body: tideLineBody(count),
    rows: [],
    values: {},
    adjustables: [],
    own: [],
    yarn: {},
    ...changes,
  }
}

/** A body of `count` rows under headings of twenty. */
export function longBody(count: number, sizes: number): Block[] {
  return Array.from({ length: count }, (_, index): Block[] => [
    ...(index % 20 === 0 ? [heading(`Part ${index / 20 + 1}`)] : []),
    row(`Row ${index + 1}:`, {
      steps: ['Ch 1, turn, sc in each st across, working ', value(ramp(sizes, index, 7)), ' sts in all.'],
      stated: ['(', value(ramp(sizes, 40 + index, 4)), ' sts)'],
    }),
  ]).flat()
}
