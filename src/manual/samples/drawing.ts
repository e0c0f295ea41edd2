import type { drawingFindings } from '../../diagnostic/catalogue/drawing.ts'
import type { Sample, Samples, WrittenSample } from '../sample.ts'

const swatch = 'swatch: {stitches: 14 per 10 cm, rows: 16 per 10 cm}'

const rows = [
  '## Mat',
  'Foundation: Ch 21.',
  'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
  'Row 2: Ch 1, sc in each st across, turn. (20 sc)',
]

function asks(request: string, text: readonly string[] = rows, facts = swatch): WrittenSample {
  return { facts: `title: Mat\nsizes: [S, M]\n${facts}`, body: [...text, request].join('\n\n') }
}

/** Two ways to ask for a drawing, of the mat or another piece. */
function requests(faulty: string, sound: string, text = rows): Sample {
  return { faulty: asks(faulty, text), sound: asks(sound, text) }
}

const cord = [...rows, '## Cord', 'Row 1: Ch 40, fasten off.']

const scarf = [
  '## Scarf',
  'Foundation: Ch 201.',
  'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (200 sc)',
]

const circle = ['## Coaster', 'Rnd 1: 6 sc in magic ring. (6 sc)', 'Rnd 2: 2 sc in each st around. (12 sc)']

const oval = [
  '## Base',
  'Ch 8.',
  'Rnd 1: Sc in 2nd ch from hook, sc in next 5 ch, 3 sc in last ch, working along opposite side of foundation chain, sc in next 5 ch, 2 sc in last ch. (16 sc)',
  'Rnd 2: Sc in each st around. (16 sc)',
]

const reversed = [...rows, 'Row 3 (RS): Ch 1, reverse sc in each st across, turn.']

const knots = [
  '## Special stitches',
  '- **Knot:** a loop drawn up long and locked; counts as 1 st.',
  ...rows,
  'Row 3 (RS): Ch 1, *sc in next st, knot in next st; rep from * across, turn.',
]

export const drawingSamples: Samples<keyof typeof drawingFindings> = {
  'drawing-words-unknown': requests('‹::schematic{piece="Mat" colour="red"}›', '::schematic{piece="Mat"}'),
  'drawing-piece-unknown': requests('‹::schematic{piece="Mate"}›', '::schematic{piece="Mat"}'),
  'drawing-size-unknown': requests('‹::schematic{piece="Mat" size="XL"}›', '::schematic{piece="Mat" size="M"}'),
  'drawing-rows-missing': requests('‹::schematic{piece="Cord"}›', '::schematic{piece="Mat"}', cord),
  'schematic-without-gauge': {
    faulty: asks('‹::schematic{piece="Mat"}›', rows, 'swatch: {stitches: 14 per 10 cm}'),
    sound: asks('::schematic{piece="Mat"}'),
  },
  'chart-rows-unknown': requests('‹::chart{rows="3–5"}›', '::chart{rows="1–2"}'),
  'chart-stitches-unknown': requests('‹::chart{stitches="30–35"}›', '::chart{stitches="1–8"}'),
  'chart-stitches-ring': requests('‹::chart{stitches="1–3"}›', '::chart', circle),
  'chart-too-large': requests('‹::chart›', '::chart{stitches="1–20"}', scarf),
  'chart-both-sides': requests('‹::chart›', '::chart{rows="2"}', oval),
  'chart-stitch-plain': requests('‹::chart›', '::chart{rows="1–2"}', reversed),
  'chart-stitch-own': requests('‹::chart›', '', knots),
}
