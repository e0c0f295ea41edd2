import { entry } from '../entry.ts'

const attributes = '`piece="…"`, `size="…"`, `swatch="…"`'

/** Findings about drawings that a draft asks for. */
export const drawingFindings = {
  'drawing-words-unknown': entry<{ drawing: string; name: string }>({
    severity: 'error',
    says: ({ drawing, name }) => `A ${drawing} can’t be asked for with “${name}”.`,
    hint: () => `It takes ${attributes}, in straight quotes.`,
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
} as const
