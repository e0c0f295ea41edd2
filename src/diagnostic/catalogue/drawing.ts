import { entry } from '../entry.ts'

/** Findings about drawings that a draft asks for. */
export const drawingFindings = {
  'drawing-words-unknown': entry<{ drawing: string; name: string; takes: readonly string[] }>({
    severity: 'error',
    says: ({ drawing, name }) => `A ${drawing} can’t be asked for with “${name}”.`,
    hint: ({ takes }) => `It takes ${takes.map((word) => `\`${word}="…"\``).join(', ')}, in straight quotes.`,
  }),
  'drawing-piece-unknown': entry<{ drawing: string; piece: string; nearest: string | null }>({
    severity: 'error',
    says: ({ drawing, piece }) =>
      piece === ''
        ? `This ${drawing} does not say of which piece it is, and no piece stands above it.`
        : `There is no piece “${piece}” with rows to draw a ${drawing} of.`,
    hint: ({ nearest }) =>
      nearest === null ? 'Write the heading that the rows stand under: `piece="…"`.' : `Write \`piece="${nearest}"\`.`,
  }),
  'drawing-size-unknown': entry<{ size: string; nearest: string | null }>({
    severity: 'error',
    says: ({ size }) => `There is no size “${size}” to draw.`,
    hint: ({ nearest }) => (nearest === null ? 'Use a name from `sizes`.' : `Write \`size="${nearest}"\`.`),
  }),
  'drawing-rows-missing': entry<{ drawing: string; piece: string; size: string | null }>({
    severity: 'error',
    says: ({ drawing, piece, size }) =>
      size === null
        ? `“${piece}” has no rows above its foundation, so there is no ${drawing} of it.`
        : `Size ${size} does not work the rows of “${piece}”, so there is no ${drawing} of it in that size.`,
    hint: ({ size }) => (size === null ? 'Leave the drawing out.' : 'Name a size that works them, or none.'),
  }),
  'schematic-without-gauge': entry<{ piece: string; swatch: string | null; missing: 'stitches' | 'rows' | null }>({
    severity: 'error',
    says: ({ piece, swatch, missing }) =>
      missing === null
        ? `There is no swatch “${swatch}” to measure “${piece}” by.`
        : `“${piece}” can’t be measured for its schematic: the swatch does not say how many ${missing} lie in a length.`,
    hint: ({ missing }) =>
      missing === null
        ? 'Use a name that stands under `swatch`.'
        : `Add \`${missing}: … per 10 cm\` to it, or leave the drawing out.`,
  }),
  'chart-rows-unknown': entry<{ rows: string; piece: string }>({
    severity: 'error',
    says: ({ rows, piece }) =>
      rows === '' ? `“${piece}” has no rows to chart.` : `“${piece}” has no rows “${rows}” to chart.`,
    hint: () => 'Give their numbers, as in `rows="1–4"`, `rows="Rnds 1–3, 5"` or `rows="Edging rnd 1"`.',
  }),
  'chart-stitches-unknown': entry<{ stitches: string; row: string }>({
    severity: 'error',
    says: ({ stitches, row }) => `${row} has no stitches “${stitches}” to chart.`,
    hint: () => 'Give the first and the last, counted along the first row that is charted: `stitches="1–12"`.',
  }),
  'chart-stitches-ring': entry<{ row: string }>({
    severity: 'error',
    says: ({ row }) => `${row} is worked into a ring, so that its chart can’t be cut to some stitches.`,
    hint: () => 'Leave `stitches` out, or begin with a later round.',
  }),
  'chart-too-large': entry<{ piece: string }>({
    severity: 'warning',
    says: ({ piece }) => `The chart of “${piece}” fits on no page in a size that can be read, so it is left out.`,
    hint: () => 'Chart fewer rows, `rows="1–4"`, or one repeat of them, `stitches="1–12"`.',
  }),
  'chart-both-sides': entry<{ row: string }>({
    severity: 'warning',
    says: ({ row }) =>
      `${row} goes along both sides of its chain; such an oval can’t be charted, so its chart is left out.`,
    hint: () =>
      'Chart later rounds, or one part of them, as in `rows="4–6" stitches="1–12"`; the rows in words are enough.',
  }),
  'chart-stitch-plain': entry<{ stitch: string }>({
    severity: 'note',
    says: ({ stitch }) =>
      `The chart shows “${stitch}” with the symbol of the plain stitch: it has none of its own here.`,
    hint: () => 'Say it in the caption: `::chart[Row 4 in reverse single crochet]`.',
  }),
  'chart-stitch-own': entry<{ name: string }>({
    severity: 'note',
    says: ({ name }) => `There is no published symbol for “${name}”: the chart shows a box with its number.`,
    hint: () => 'Its meaning stands under “Special stitches”; nothing needs to be done.',
  }),
} as const
