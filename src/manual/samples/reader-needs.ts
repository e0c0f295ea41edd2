import type { readerNeedsFindings } from '../../diagnostic/catalogue/reader-needs.ts'
import type { Sample } from '../sample.ts'

const mat = '## Mat\n\nRnd 1: 6 sc in ring. (6 sc)\n\nRnd 2: 2 hdc in each st around. (12 hdc)'

function listed(...lines: readonly string[]): { readonly body: string } {
  return { body: `## Abbreviations\n\n${lines.join('\n')}\n\n${mat}` }
}

const facts = 'title: Mat\nsizes: [S, M]\npublished: 2026-05-02'

export const readerNeedsSamples: Readonly<Record<keyof typeof readerNeedsFindings, Sample>> = {
  'abbreviation-unlisted': {
    faulty: listed('- sc: single crochet'),
    sound: listed('- sc: single crochet', '- hdc: half double crochet'),
  },
  'abbreviation-unused': {
    faulty: listed('- sc: single crochet', '- hdc: half double crochet', '- tr: treble'),
    sound: listed('- sc: single crochet', '- hdc: half double crochet'),
  },
  'abbreviation-of-other-terms': {
    faulty: listed('- sc: single crochet', '- hdc: half treble'),
    sound: listed('- sc: single crochet', '- hdc: half double crochet'),
  },
  'section-missing': {
    faulty: { facts, body: mat },
    sound: {
      facts: `${facts}\nyarn: [{as: main, category: 4}]\nhooks: [5 mm]\nswatch: {stitches: 14 per 10 cm}\nfinished: {Width: 20 cm}`,
      body: mat,
    },
  },
}
