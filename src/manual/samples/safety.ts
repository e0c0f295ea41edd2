import type { safetyFindings } from '../../diagnostic/catalogue/safety.ts'
import type { Sample, Samples } from '../sample.ts'

const rows = '## Body\n\nRow 1: Ch 9, sc in 2nd ch from hook and in each ch across. (8 sc)'

/** The same facts and rows with an ending that calls for a caution and with one that does not. */
function ending(title: string, sizes: string, faulty: string, sound: string): Sample {
  const facts = `title: ${title}\nsizes: [${sizes}]`
  const draft = (words: string) => ({ facts, body: `${rows}\n\n## Finishing\n\n${words}` })
  return { faulty: draft(faulty), sound: draft(sound) }
}

/** The same rows under another title. */
function titled(faulty: string, sound: string, sizes = '3 months, 6 months'): Sample {
  const draft = (title: string) => ({ facts: `title: ${title}\nsizes: [${sizes}]`, body: rows })
  return { faulty: draft(faulty), sound: draft(sound) }
}

export const safetySamples: Samples<keyof typeof safetyFindings> = {
  'child-neck-cord': ending(
    'Quay Vest',
    'Age 4, Age 6',
    'Thread a ‹cord› through the neck edge.',
    'Work 20 sc along the neck edge, so that it lies close.',
  ),
  'child-hat-ties': ending(
    'Quay Bonnet',
    'Age 2, Age 4',
    'Sew a ‹tie› to each corner, under the chin.',
    'Sew the halves of a snap to the corners of the band.',
  ),
  'child-waist-cord': ending(
    'Quay Trousers',
    'Age 4, Age 6',
    'Thread a ‹drawstring› through the waist.',
    'Sew elastic into the waist.',
  ),
  'child-cord': ending('Quay Mittens', 'Age 4, Age 6', 'Join the two with a long ‹cord›.', 'Weave in the ends.'),
  'child-small-parts': ending(
    'Quay Vest',
    '6 months, 12 months',
    'Sew three ‹buttons› to the band.',
    'Sew the band down.',
  ),
  'toy-small-parts': ending(
    'A Toy Crab',
    'One size',
    'Place the ‹safety eyes› between Rows 3 and 4.',
    'Embroider the eyes between Rows 3 and 4.',
  ),
  'child-fringe': ending(
    'Quay Poncho',
    'Age 2, Age 4',
    'Knot a ‹fringe› into the edge, 15 cm long.',
    'Work one more row along the edge.',
  ),
  'baby-cover': titled('‹Quay Blanket›', 'Quay Vest'),
  'baby-hat': titled('‹Quay Beanie›', 'Quay Vest'),
  'child-nightwear': titled('‹Quay Nightgown›', 'Quay Tunic', 'Age 4, Age 6'),
}
