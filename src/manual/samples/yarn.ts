import type { yarnFindings } from '../../diagnostic/catalogue/yarn.ts'
import type { Sample, Samples } from '../sample.ts'
import { factPair } from '../sample.ts'

const scarf = (chains: string) =>
  `## Scarf\n\nFoundation: Ch ${chains}.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n\nRow 2: Ch 1, sc in each st across, turn.`

const body = scarf('21 (31)')
const swatch = 'swatch: {stitches: 14 per 10 cm, rows: 16 per 10 cm, size: 10 cm x 10 cm, weight: 7 g}'
const skein = 'skein: {weight: 100 g, length: 200 m}'
const one = `yarn: [{as: main, ${skein}}]`

/** Two drafts of the scarf whose yarns differ. */
function yarns(faulty: string, sound: string, text = body): Sample {
  return factPair(`${swatch}\nyarn: [${faulty}]`, `${swatch}\nyarn: [${sound}]`, text)
}

function finish(faulty: string, sound: string): Sample {
  return factPair(`${swatch}\n${one}\nfinish: [${faulty}]`, `${swatch}\n${one}\nfinish: [${sound}]`, body)
}

/** The same with more rows, whose number may fall from one size to the next. */
const long = (rows: string) => `${scarf('21')}\n\nRows 3–${rows}: Rep Row 2.`

export const yarnSamples: Samples<keyof typeof yarnFindings> = {
  'yarn-falls': {
    faulty: yarns('{as: ‹main›}', '', long('90 (60)')).faulty,
    sound: yarns('', '{as: main}', long('60 (90)')).sound,
  },
  'yarn-without-rows': yarns('{as: main}, {as: ‹trim›}', '{as: main}, {as: trim, rows: {Scarf: Row 2}}'),
  'row-yarn-unclear': {
    faulty: yarns(
      '{as: main}, {as: trim}',
      '',
      body.replace('Row 1: ', 'Row 1: With MC, ').replace(/(Row 2: .*)$/, '‹$1 Alternate colors in this row.›'),
    ).faulty,
    sound: yarns(
      '',
      '{as: main}, {as: trim}',
      body.replace('Row 1: ', 'Row 1: With MC, ').replace('Row 2: ', 'Row 2: With CC, '),
    ).sound,
  },
  'yarn-piece-unknown': yarns('{as: main, pieces: [‹Scarve›]}', '{as: main, pieces: [Scarf]}'),
  'yarn-rows-unreadable': yarns('{as: main, rows: {Scarf: ‹the first›}}', '{as: main, rows: {Scarf: Rows 1-2}}'),
  'swatch-weight-alone': factPair(
    'swatch: {stitches: 14 per 10 cm, rows: 16 per 10 cm, weight: ‹7 g›}',
    'swatch: {stitches: 14 per 10 cm, rows: 16 per 10 cm, size: 10 cm x 10 cm, weight: 7 g}',
    body,
  ),
  'finish-amount-missing': finish('{fringe: ‹{length: 15 cm}›}', '{fringe: {length: 15 cm, strands: 40}}'),
  'finish-amount-wrong': finish('{pompom: {across: ‹6 g›}}', '{pompom: {across: 6 cm}}'),
  'finish-needs-skein': {
    faulty: factPair(`${swatch}\nyarn: [{as: main}]\nfinish: [{fringe: ‹{length: 15 cm, strands: 40}›}]`, '', body)
      .faulty,
    sound: finish('', '{fringe: {length: 15 cm, strands: 40}}').sound,
  },
}
