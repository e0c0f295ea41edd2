import type { draftFindings } from '../../diagnostic/catalogue/draft.ts'
import type { FileSample, Samples } from '../sample.ts'
import { factPair, pair } from '../sample.ts'

const mat = '## Mat\n\nRow 1: Ch 9, sc in 2nd ch from hook and in each ch across. (8 sc)'
const facts = 'title: Mat\nsizes: [S, M]'
const whole: FileSample = { file: `---\n${facts}\n---\n\n${mat}\n` }

/** A picture that was put into the text. */
const pasted = `![The mat](data:image/png;base64,${'iVBORw0KGgo'.repeat(220_000)})`

const skein = (text: string) => `yarn: [{as: main, skein: {weight: ${text}, length: 200 m}}]`

export const draftSamples: Samples<keyof typeof draftFindings> = {
  'draft-empty': { faulty: { file: '', instead: 'A file with nothing in it.' }, sound: whole },
  'draft-too-long': {
    faulty: { file: `---\n${facts}\n---\n\n${mat}\n\n${pasted}\n`, instead: 'A draft with its pictures pasted in.' },
    sound: { file: `---\n${facts}\n---\n\n${mat}\n\nA picture of it lies beside this draft.\n` },
  },
  'draft-not-text': {
    faulty: {
      file: Uint8Array.from([0xff, 0xfe, 0x4d, 0x00]),
      instead: 'A file that was saved as “Unicode (UTF-16)”.',
    },
    sound: whole,
  },
  'front-matter-missing': { faulty: { file: `‹# Mat›\n\n${mat}\n` }, sound: whole },
  'front-matter-unclosed': { faulty: { file: `‹---›\n${facts}\n\n${mat}\n` }, sound: whole },
  'front-matter-unreadable': {
    faulty: { facts: 'title: Mat\nsizes: ‹[›S, M', body: mat },
    sound: { body: mat },
  },
  'key-unknown': factPair('‹skil›: easy', 'skill: easy', mat),
  'key-missing': { faulty: { facts: '‹title: Mat›', body: mat }, sound: { body: mat } },
  'fact-wrong': factPair('skill: ‹beginner›', 'skill: basic', mat),
  'accepted-unknown': {
    faulty: {
      facts: `${facts}\naccepted: [{code: ‹row-numbers-gap›, at: Row 2, why: Row 2 is in the film.}]`,
      body: mat,
    },
    sound: {
      facts: `${facts}\naccepted: [{code: row-number-gap, at: Row 3, why: Row 2 is in the film.}]`,
      body: `${mat}\n\nRow 3: Ch 1, sc in each st across. (8 sc)`,
    },
  },
  'accepted-nothing': {
    faulty: {
      facts: `${facts}\naccepted: [{code: row-number-gap, at: ‹Row 3›, why: Row 2 is in the film.}]`,
      body: mat,
    },
    sound: { body: mat },
  },
  'size-listed-twice': {
    faulty: { facts: 'title: Mat\nsizes: ‹[S, M, M]›', body: mat },
    sound: { facts: 'title: Mat\nsizes: [S, M, L]', body: mat },
  },
  'measure-unreadable': factPair(skein('‹two ounces›'), skein('2 oz'), mat),
  'swatch-size-unreadable': factPair('swatch: {size: ‹12 cm›}', 'swatch: {size: 12 cm x 12 cm}', mat),
  'yarn-unknown': factPair(
    'yarn: [{as: main}, {as: edging}]\nsample: {size: S, used: {edgeing: ‹40 g›}}',
    'yarn: [{as: main}, {as: edging}]\nsample: {size: S, used: {edging: 40 g}}',
    `${mat.replace('Ch', 'With main, ch')}\n\nRow 2: With edging, ch 1, sc in each st across.`,
  ),
  'kind-unusual': {
    faulty: { facts: `${facts}\nkind: ‹mats›`, body: 'A mat.' },
    sound: { facts: `${facts}\nkind: mat`, body: 'A mat.' },
  },
  'placeholder-unclosed': pair('The mat is ‹{{›across wide.', 'The mat is {{30 cm}} wide.'),
  'passage-unclosed': pair(
    '‹:::sizes›{only="M"}\nWork Row 2 once more.',
    ':::sizes{only="M"}\nWork Row 2 once more.\n:::',
  ),
  'directive-without-sizes': pair(
    'Weave in the ends. ‹:sizes[Press the border.]›',
    'Weave in the ends. :sizes[Press the border.]{only="M"}',
  ),
}
