import type { fitFindings } from '../../diagnostic/catalogue/fit.ts'
import type { Samples } from '../sample.ts'

const swatch = 'swatch: {stitches: 12 per 10 cm, rows: 8 per 10 cm}'
const head = `title: Mat\nsizes: [S, M]\n${swatch}\n`

function grading(lines: string): string {
  return `\`\`\`grading\n${lines}\n\`\`\``
}

const across = (multiple: string) =>
  grading(`across = [26, 40] cm\nsts = stitches(across) as multiple of ${multiple}\nmade = width(sts)`)

export const fitSamples: Samples<keyof typeof fitFindings> = {
  'tolerance-unfit': {
    faulty: { facts: `${head}tolerance: ‹2›`, body: across('6') },
    sound: { facts: `${head}tolerance: 2 cm`, body: across('6') },
  },
  'measure-off-target': {
    faulty: { facts: `${head}finished: {Width: ‹made›}`, body: across('18') },
    sound: { facts: `${head}finished: {Width: made}`, body: across('6') },
  },
  'rounding-moves-measure': {
    faulty: {
      facts: head,
      body: across('18').replace('stitches(across) as multiple of 18', '‹$&›'),
    },
    sound: { facts: head, body: across('6') },
  },
}
