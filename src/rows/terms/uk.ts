import type { TermTable } from './stitch.ts'

export const ukTerms: TermTable = {
  terms: 'uk',
  source: 'Craft Yarn Council, Differences in US and UK terms; GMC Publications, Shawls & Wraps, UK edition 2015',
  stitches: [
    {
      stitch: 'slipStitch',
      abbreviation: 'ss',
      name: 'slip stitch',
      also: ['sl st', 'slst', 'sl-st', 'sl', 'single', 'single stitch'],
    },
    { stitch: 'singleCrochet', abbreviation: 'dc', name: 'double crochet', also: ['double', 'double stitch'] },
    {
      stitch: 'halfDoubleCrochet',
      abbreviation: 'htr',
      name: 'half treble crochet',
      also: ['half treble', 'half double treble', 'short treble'],
    },
    {
      stitch: 'doubleCrochet',
      abbreviation: 'tr',
      name: 'treble crochet',
      also: ['treble', 'trc', 'treble stitch', 'long', 'long stitch', 'lc'],
    },
    {
      stitch: 'treble',
      abbreviation: 'dtr',
      name: 'double treble crochet',
      also: ['double treble', 'double long', 'long treble'],
    },
    {
      stitch: 'doubleTreble',
      abbreviation: 'trtr',
      name: 'triple treble crochet',
      also: ['ttr', 'triple treble', 'treble treble'],
    },
    { stitch: 'tripleTreble', abbreviation: 'qtr', name: 'quadruple treble crochet', also: ['quadruple treble'] },
  ],
}
