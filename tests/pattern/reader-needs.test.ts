import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'

const hat = `
## Hat
Rnd 1: 6 sc in ring. (6 sc)

Rnd 2: 2 hdc in each st around. (12 hdc)

Rnd 3: Ch 1, sc2tog around, sl st in first st. (6 sc)
`

/** Codes and the words of the draft that they stand at. */
function found(body: string, facts = ''): string[] {
  const text = `---\ntitle: Hat\nsizes: [S]\n${facts}---\n${body}`
  return readDraft('hat.md', 'hat', text).outcome.diagnostics.map(
    ({ code, at, message }) => `${code} ${/“([^”]+)”/.exec(message)?.[1] ?? text.slice(at.start, at.end)}`,
  )
}

const full = [
  '- ch(s): chain(s)',
  '- **sc** – single crochet',
  '- hdc = half double crochet',
  '- sl st (ss) - slip stitch',
  '- sc2tog: two together',
]

describe('the draft’s own list of abbreviations', () => {
  it.each([
    ['a list', `\n## Abbreviations\n\n${full.join('\n')}\n${hat}`],
    ['lines', `\n## Abbreviations (US)\n\n${full.map((line) => line.slice(2)).join('\n')}\n${hat}`],
    [
      'a table',
      `\n## Abbreviations\n\n| abbr | means |\n|---|---|\n| ch | chain |\n| sc | single crochet |\n| hdc | half double crochet |\n| sl st | slip stitch |\n| tog | together |\n${hat}`,
    ],
    [
      'one line',
      `\n## Abbreviations\n\nch: chain; sc: single crochet; **hdc**: half double crochet; sl st: slip stitch; tog: together\n${hat}`,
    ],
    [
      'one line with commas',
      `\n## Abbreviations\n\nch = chain, sc = single crochet (insert hook, pull up a loop), hdc = half double crochet, sl st = slip stitch, tog = together.\n${hat}`,
    ],
    [
      'words that formulas print',
      `\n## Abbreviations\n\n${[...full, '- inc: increase'].join('\n')}\n${hat}\nHere {{evenly(2, 20)}} is meant loosely.\n`,
    ],
    [
      'spaces of any size',
      `\n## Abbreviations\n\n${[...full, '- ch-sp: chain space'].join('\n')}\n${hat}\nMind the ch-2 sps.\n`,
    ],
    ['none at all', hat],
    ['a list below the rows', `${hat}\n### Abbreviations used\n\n${full.join('\n')}\n`],
  ])('that holds what the rows use is right: %s', (_, body) => {
    expect(found(body)).toEqual([])
  })

  it.each(['hdc', 'sl st', 'ch', 'sc2tog'])('lacks %s', (name) => {
    const lines = full.filter((line) => !line.replaceAll('*', '').startsWith(`- ${name}`))
    expect(found(`\n## Abbreviations\n\n${lines.join('\n')}\n${hat}`)).toEqual([`abbreviation-unlisted ${name}`])
  })

  it('holds what is used nowhere', () => {
    const lines = [...full, '- tr: treble crochet', '- yo: yarn over']
    expect(found(`\n## Abbreviations\n\n${lines.join('\n')}\n${hat}`)).toEqual([
      'abbreviation-unused tr',
      'abbreviation-unused yo',
    ])
  })

  it('says a word of the other terms', () => {
    const uk = hat.replaceAll('hdc', 'htr').replaceAll('sc', 'dc')
    const lines = [
      '- ch: chain',
      '- dc: double crochet',
      '- htr: half double crochet',
      '- ss: slip stitch',
      '- dc2tog: two together',
    ]
    expect(found(`\n## Abbreviations\n\n${lines.join('\n')}\n${uk.replace('sl st', 'ss')}`, 'terms: uk\n')).toEqual([
      'abbreviation-of-other-terms half double crochet',
    ])
  })

  it('may leave out what is written in full', () => {
    const lines = full.filter((line) => !line.startsWith('- hdc'))
    const written = hat.replaceAll('2 hdc', '2 half double crochet').replaceAll(' hdc', ' sts')
    expect(found(`\n## Abbreviations\n\n${lines.join('\n')}\n${written}`)).toEqual([])
  })
})

describe('a pattern that is published', () => {
  const published = 'published: 2026-03-14\n'

  it('needs yarn, hook, gauge and finished measures', () => {
    expect(found(hat, published)).toEqual(Array.from({ length: 4 }, () => 'section-missing 2026-03-14'))
  })

  it('may say them under headings of its own', () => {
    const body = '\n## Materials\n\nA ball of red.\n\n## Tension\n\nLoose.\n\n## Measurements\n\nSmall.\n'
    expect(found(body + hat, published)).toEqual([])
  })

  it('may say them in its facts', () => {
    const facts = 'yarn: [{as: main}]\nhooks: [5 mm]\nswatch: {stitches: 12 per 10 cm}\nfinished: {Depth: 20 cm}\n'
    expect(found(hat, published + facts)).toEqual([])
  })

  it('before that may lack anything', () => {
    expect(found(hat)).toEqual([])
  })
})
