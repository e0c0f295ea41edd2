import type { readerNeedsFindings } from '../../diagnostic/catalogue/reader-needs.ts'
import type { Samples } from '../sample.ts'

const mat = '## Mat\n\nRnd 1: 6 sc in ring. (6 sc)\n\nRnd 2: 2 hdc in each st around. (12 hdc)'

function listed(lines: readonly string[], rows = mat): { readonly body: string } {
  return { body: `## Abbreviations\n\n${lines.join('\n')}\n\n${rows}` }
}

const both = ['- sc: single crochet', '- hdc: half double crochet']
const facts = 'title: Mat\nsizes: [S, M]'

export const readerNeedsSamples: Samples<keyof typeof readerNeedsFindings> = {
  'abbreviation-unlisted': {
    faulty: listed(['- sc: single crochet'], mat.replace(/2 hdc.*around/, '‹$&›')),
    sound: listed(both),
  },
  'abbreviation-unused': { faulty: listed([...both, '- ‹tr›: treble']), sound: listed(both) },
  'abbreviation-of-other-terms': {
    faulty: listed(['- sc: single crochet', '- ‹hdc›: half treble']),
    sound: listed(both),
  },
  'abbreviation-means-other': {
    faulty: listed(['- sc: single crochet', '- ‹hdc›: double crochet']),
    sound: listed(both),
  },
  'text-list-length': {
    faulty: { body: 'You need ‹5 (6, 7)› buttons.' },
    sound: { body: 'You need 5 (6) buttons.' },
  },
  'character-unprinted': {
    faulty: { body: 'Yarn by ‹털실› of Busan.' },
    sound: { body: 'Yarn by Teolsil of Busan.' },
  },
  'section-missing': {
    faulty: {
      facts: `${facts}\npublished: ‹2026-05-02›\nyarn: [{as: main, category: 4}]\nhooks: [5 mm]\nswatch: {stitches: 14 per 10 cm}`,
      body: mat,
    },
    sound: {
      facts: `${facts}\npublished: 2026-05-02\nyarn: [{as: main, category: 4}]\nhooks: [5 mm]\nswatch: {stitches: 14 per 10 cm}\nfinished: {Width: 20 cm}`,
      body: mat,
    },
  },
}
