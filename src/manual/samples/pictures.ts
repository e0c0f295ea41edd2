import type { pictureFindings } from '../../diagnostic/catalogue/pictures.ts'
import type { Samples } from '../sample.ts'
import { factPair, pair } from '../sample.ts'

/** The first letters of a picture in PNG. */
const png = '\u0089PNG\r\n\u001a\n'

export const pictureSamples: Samples<keyof typeof pictureFindings> = {
  'picture-missing': pair('![The mat on a table](‹./matt.png›)', '![The mat on a table](./mat.png)', {
    beside: { 'mat.png': png },
  }),
  'cover-missing': factPair('cover: {src: ‹./matt.png›, alt: A mat}', 'cover: {src: ./mat.png, alt: A mat}', 'A mat.', {
    beside: { 'mat.png': png },
  }),
  'picture-unreadable': pair('![The mat on a table](‹./mat.docx›)', '![The mat on a table](./mat.png)', {
    beside: { 'mat.png': png, 'mat.docx': 'PK' },
  }),
  'picture-elsewhere': pair(
    '![The mat on a table](‹https://studio.example/mat.png›)',
    '![The mat on a table](./mat.png)',
    { beside: { 'mat.png': png } },
  ),
  'picture-without-words': pair('‹![](./mat.png)›', '![The mat on a table](./mat.png)', { beside: { 'mat.png': png } }),
}
