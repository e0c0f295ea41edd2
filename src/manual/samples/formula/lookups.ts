import type { lookupFindings } from '../../../diagnostic/catalogue/formula/lookups.ts'
import type { Sample, Samples } from '../../sample.ts'
import { factPair } from '../../sample.ts'
import { graded } from './graded.ts'

const swatched = (swatch: string) => ({ facts: `title: Mat\nsizes: [S, M]\nswatch: ${swatch}` })
const plain = swatched('{stitches: 14 per 10 cm, rows: 16 per 10 cm}')
const ribbed = swatched('{body: {stitches: 14 per 10 cm, rows: 16 per 10 cm}, ribbing: {stitches: 16 per 10 cm}}')
const shells = swatched('{stitches: 14 per 10 cm, repeats: {shell: {stitches: 6, width: 4.2 cm}}}')
const women = { facts: 'title: Top\nsizes: [S, M]\nfits: {table: women, sizes: [Small, Medium]}' }

const text = 'The mat is worked in rows.'
const drawn = '```grading\nbust = body("bust") + 5 cm\n```\n\nThe top is {{bust}} around.'
const table = 'measure,unit,S,M\nBust,cm,84,92'

function fits(faulty: string, sound: string): Sample {
  return factPair(`fits: ${faulty}`, `fits: ${sound}`, drawn)
}

export const lookupSamples: Samples<keyof typeof lookupFindings> = {
  'swatch-missing': {
    faulty: graded('sts = ‹stitches(30 cm)› as whole', '').faulty,
    sound: graded('', 'sts = stitches(30 cm) as whole', '', plain).sound,
  },
  'swatch-unknown': graded(
    'sts = stitches(30 cm, ‹ribing›) as whole',
    'sts = stitches(30 cm, ribbing) as whole',
    '',
    ribbed,
  ),
  'gauge-missing': graded('band = ‹rows(5 cm, ribbing)› as whole', 'band = rows(5 cm) as whole', '', ribbed),
  'gauge-scatters': factPair(
    'swatch: {stitches: [12 per 10 cm, ‹14 per 10 cm›]}',
    'swatch: {stitches: [12 per 10 cm, 12.5 per 10 cm]}',
    text,
  ),
  'gauge-named-twice': factPair(
    'swatch: {shell: {stitches: 14 per 10 cm, repeats: {shell: ‹{stitches: 6, width: 4 cm}›}}}',
    'swatch: {plain: {stitches: 14 per 10 cm, repeats: {shell: {stitches: 6, width: 4 cm}}}}',
    text,
  ),
  'repeat-unreadable': factPair(
    'swatch: {stitches: 14 per 10 cm, repeats: {shell: {stitches: 6, width: ‹two fingers›}}}',
    'swatch: {stitches: 14 per 10 cm, repeats: {shell: {stitches: 6, width: 4.2 cm}}}',
    text,
  ),
  'repeat-unknown': graded(
    'shells = repeats(30 cm, ‹shel›) as whole',
    'shells = repeats(30 cm, shell) as whole',
    '',
    shells,
  ),
  'repeat-without-width': {
    faulty: graded(
      'shells = repeats(30 cm, ‹shell›) as whole',
      '',
      '',
      swatched('{stitches: 14 per 10 cm, repeats: {shell: {rows: 2, height: 3 cm}}}'),
    ).faulty,
    sound: graded('', 'shells = repeats(30 cm, shell) as whole', '', shells).sound,
  },
  'gauge-unreadable': factPair('swatch: {stitches: ‹14 to the hand›}', 'swatch: {stitches: 14 per 10 cm}', text),
  'gauge-not-positive': factPair('swatch: {stitches: ‹0 per 10 cm›}', 'swatch: {stitches: 14 per 10 cm}', text),
  'body-table-missing': {
    faulty: graded('bust = body(‹"bust"›)', '').faulty,
    sound: graded('', 'bust = body("bust")', '', women).sound,
  },
  'body-table-unknown': fits('{table: ‹ladies›, sizes: [Small, Medium]}', '{table: women, sizes: [Small, Medium]}'),
  'body-column-unknown': fits('{table: women, sizes: [Small, ‹Middle›]}', '{table: women, sizes: [Small, Medium]}'),
  'body-columns-length': fits('{table: women, sizes: ‹[Small]›}', '{table: women, sizes: [Small, Medium]}'),
  'body-measure-unknown': graded('reach = body(‹"upper arms"›)', 'reach = body("upper arm")', '', women),
  'table-file-path': {
    faulty: { facts: 'title: Top\nsizes: [S, M]\nfits: {table: ‹../all/bodies.csv›}', body: drawn },
    sound: {
      facts: 'title: Top\nsizes: [S, M]\nfits: {table: ./bodies.csv}',
      body: drawn,
      beside: { 'bodies.csv': table },
    },
  },
  'table-file-unreadable': {
    faulty: {
      facts: 'title: Top\nsizes: [S, M]\nfits: {table: ‹./bodys.csv›}',
      body: drawn,
      beside: { 'bodies.csv': table },
    },
    sound: {
      facts: 'title: Top\nsizes: [S, M]\nfits: {table: ./bodies.csv}',
      body: drawn,
      beside: { 'bodies.csv': table },
    },
  },
  'table-slip': {
    faulty: {
      facts: 'title: Top\nsizes: [S, M]\nfits: {table: ‹./bodies.csv›}',
      body: drawn,
      beside: { 'bodies.csv': table.replace('92', 'wide') },
    },
    sound: {
      facts: 'title: Top\nsizes: [S, M]\nfits: {table: ./bodies.csv}',
      body: drawn,
      beside: { 'bodies.csv': table },
    },
  },
  'fit-unknown': graded('bust = body("bust") + ease(‹"clasic"›)', 'bust = body("bust") + ease("classic")', '', women),
}
