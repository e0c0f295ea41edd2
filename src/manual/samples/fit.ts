import type { fitFindings } from '../../diagnostic/catalogue/fit.ts'
import type { Samples, WrittenSample } from '../sample.ts'

const swatch = 'swatch: {stitches: 12 per 10 cm, rows: 8 per 10 cm}'
const head = `title: Mat\nsizes: [S, M]\n${swatch}\n`

function grading(lines: string): string {
  return `\`\`\`grading\n${lines}\n\`\`\``
}

const across = (multiple: string) =>
  grading(`across = [26, 40] cm\nsts = stitches(across) as multiple of ${multiple}\nmade = width(sts)`)

const three = 'title: Mat\nsizes: [S, M, L]\n'
const four = 'title: Mat\nsizes: [S, M, L, XL]'

/** A neck whose measures were claimed over 66, 72 and 78 stitches. */
function claimed(lengths: string, facts = ''): WrittenSample {
  return { facts: `${three}${facts}finished: {Neck: {claims: "${lengths}", over: "[66, 72, 78]"}}`, body: 'A mat.' }
}

function pullover(neck: string): WrittenSample {
  const facts = 'title: Pullover\nsizes: [Small, Medium]\nfits: {table: women}\nkind: pullover'
  return { facts: `${facts}\nfinished: {Neck opening: "${neck}"}`, body: 'A pullover.' }
}

function hat(formula: string): WrittenSample {
  const facts = `title: Hat\nsizes: [Woman, Man]\nfits: {table: head}\n${swatch}`
  return { facts: `${facts}\nfinished: {Circumference: '${formula}'}`, body: 'A hat.' }
}

const row = (text: string) => `## Mat\n\n${text}`

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
  'claim-unfit': {
    faulty: claimed('‹[66, 72, 78]›'),
    sound: claimed('[22 3/4, 25, 27] in'),
  },
  'claims-uneven': {
    faulty: claimed('‹[21, 25, 27] in›'),
    sound: claimed('[22 3/4, 25, 27] in'),
  },
  'claims-unlike-swatch': {
    faulty: claimed('‹[50, 54.5, 59] cm›', `${swatch}\n`),
    sound: claimed('[55, 60, 65] cm', `${swatch}\n`),
  },
  'too-narrow-for-head': {
    faulty: pullover('‹[42, 46] cm›'),
    sound: pullover('[48, 50] cm'),
  },
  'measure-falls': {
    faulty: {
      facts: `${head}finished: {Width: "‹[50, 40] cm›"}`,
      body: 'A mat.',
    },
    sound: { facts: `${head}finished: {Width: "[40, 50] cm"}`, body: 'A mat.' },
  },
  'measure-same': {
    faulty: hat('‹width(stitches(body("head") - 4 cm) as multiple of 12)›'),
    sound: hat('width(stitches(body("head") - 4 cm) as multiple of 4)'),
  },
  'foundation-falls': {
    faulty: { body: row('‹Row 1: Ch 41 (31), sc in 2nd ch from hook and in each ch across.›') },
    sound: { body: row('Row 1: Ch 31 (41), sc in 2nd ch from hook and in each ch across.') },
  },
  'list-falls': {
    faulty: { facts: four, body: grading('depth = ‹[20, 22, 34, 26] cm›') },
    sound: { facts: four, body: grading('depth = [20, 22, 24, 26] cm') },
  },
}
