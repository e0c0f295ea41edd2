import type { readerChangeFindings } from '../../diagnostic/catalogue/reader-changes.ts'
import type { Samples } from '../sample.ts'

const swatch = 'swatch: {stitches: 12 per 10 cm, rows: 8 per 10 cm}'
const facts = (reader: string, more = swatch) => `title: Mat\nsizes: [S, M]\n${more}\nreader: ${reader}`
const body = `\`\`\`grading
across = [26, 40] cm
sts    = stitches(across) as whole
made   = width(sts)
\`\`\`

The mat is {{made}} wide.`
const sound = { facts: facts('{across: {from: 20 cm, to: 50 cm}}'), body }

export const readerChangeSamples: Samples<keyof typeof readerChangeFindings> = {
  'reader-unknown': { faulty: { facts: facts('{width: ‹{from: 20 cm, to: 50 cm}›}'), body }, sound },
  'reader-not-length': { faulty: { facts: facts('{sts: ‹{from: 20 cm, to: 50 cm}›}'), body }, sound },
  'reader-rounded': { faulty: { facts: facts('{made: ‹{from: 20 cm, to: 50 cm}›}'), body }, sound },
  'reader-limits': { faulty: { facts: facts('{across: ‹{from: 50 cm, to: 20 cm}›}'), body }, sound },
  'reader-outside': { faulty: { facts: facts('{across: ‹{from: 30 cm, to: 50 cm}›}'), body }, sound },
  'reader-gauge-lines': {
    faulty: {
      facts: facts('{gauge: ‹{within: 15 %}›}', 'swatch: {hook: 5 mm}'),
      body: '```grading\nacross = 30 cm\n```\n\nThe mat is {{across}} wide.',
    },
    sound: { facts: facts('{gauge: {within: 15 %}}'), body },
  },
  'reader-gauge-fixed': {
    faulty: {
      facts: `${facts('{gauge: ‹{within: 15 %}›}')}\nfinished: {Width: {claims: "[26, 40] cm", over: sts}}`,
      body,
    },
    sound: { facts: `${facts('{gauge: {within: 15 %}}')}\nfinished: {Width: made}`, body },
  },
}
