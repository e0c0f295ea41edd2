import type { TermTable } from './stitch.ts'

export const usTerms: TermTable = {
  terms: 'us',
  source: 'Craft Yarn Council, Crochet abbreviations master list (from memory, two thirds seen in use)',
  stitches: [
    { stitch: 'slipStitch', abbreviation: 'sl st', name: 'slip stitch', also: ['ss', 'slst', 'sl-st', 'sl'] },
    { stitch: 'singleCrochet', abbreviation: 'sc', name: 'single crochet', also: ['single'] },
    { stitch: 'halfDoubleCrochet', abbreviation: 'hdc', name: 'half double crochet', also: ['half double', 'half dc'] },
    { stitch: 'doubleCrochet', abbreviation: 'dc', name: 'double crochet', also: ['double'] },
    { stitch: 'treble', abbreviation: 'tr', name: 'treble crochet', also: ['treble', 'triple crochet', 'trc', 'tc'] },
    { stitch: 'doubleTreble', abbreviation: 'dtr', name: 'double treble crochet', also: ['double treble'] },
    { stitch: 'tripleTreble', abbreviation: 'trtr', name: 'triple treble crochet', also: ['triple treble'] },
  ],
}
