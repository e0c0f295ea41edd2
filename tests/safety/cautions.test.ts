import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'

interface Told {
  readonly title?: string
  readonly summary?: string
  readonly sizes: string
  readonly facts?: string
  readonly body?: string
}

const rows = 'Foundation: Ch 9.\n\nRow 1: Sc in 2nd ch from hook and in each ch across. (8 sc)'

function read({ title = 'Quay Piece', summary = 'A piece.', sizes, facts = '', body = '' }: Told) {
  const text = `---\ntitle: ${title}\nsummary: ${summary}\nsizes: [${sizes}]\n${facts}\n---\n\n## Piece\n\n${rows}\n\n${body}\n`
  return { text, ...readDraft('quay.md', 'quay', text).outcome }
}

/** The codes of the cautions that a draft calls for, each with the names of its sizes where it is not for all. */
function cautions(told: Told): string[] {
  const { value, diagnostics } = read(told)
  const found = diagnostics.filter(({ code }) => /^(?:child|baby|toy)-/.test(code))
  expect(value?.cautions).toHaveLength(found.length)
  return found
    .map(({ code, sizes }) => {
      const names = sizes.map((size) => value?.sizes[size])
      return names.length === value?.sizes.length ? code : `${code}: ${names.join(', ')}`
    })
    .sort()
}

const children = 'fits: {table: child, sizes: [2, 4, 6]}'
const cord = '## Finishing\n\nThread a cord through the last round of the neck.'
const buttons = 'Sew the buttons to the band.'

describe('cautions that a draft calls for', () => {
  it.each<readonly [what: string, told: Told, expected: readonly string[]]>([
    ['a cord at the neck, by age', { sizes: 'Age 4, Age 6', body: cord }, ['child-neck-cord']],
    ['a cord at the neck, by table', { sizes: 'S, M, L', facts: children, body: cord }, ['child-neck-cord']],
    ['a tie, by word', { sizes: 'Child', body: 'Sew the tie to the hood.' }, ['child-neck-cord']],
    ['ties of a heading', { sizes: '2T, 3T', body: '## Ties for the hood (make 2)\n\nCh 60.' }, ['child-neck-cord']],
    [
      'a drawstring in a row',
      { sizes: '4 years, 6 yrs', body: '## Drawstring\n\nCh 160.', title: 'Quay Hoodie' },
      ['child-neck-cord'],
    ],
    [
      'a bonnet',
      { title: 'Quay Bonnet', sizes: 'Toddler', body: 'Work the ties: join yarn, ch 50.' },
      ['child-hat-ties'],
    ],
    [
      'a bonnet for a baby',
      { title: 'Quay Bonnet', sizes: '0–3 months, 3–6 months', body: 'Sew a ribbon to each corner.' },
      ['baby-hat', 'child-hat-ties'],
    ],
    ['a waist', { sizes: 'Age 8, Age 10', body: 'Weave the cord through the waist.' }, ['child-waist-cord']],
    ['both', { sizes: 'Age 8', body: 'Weave cords through hood and hem.' }, ['child-neck-cord', 'child-waist-cord']],
    [
      'a cord among the finishes',
      { sizes: 'Child', facts: 'finish: [cord]', title: 'Quay Hooded Vest' },
      ['child-neck-cord'],
    ],
    ['a cord that nobody places', { sizes: 'Child', facts: 'finish: [cord]' }, ['child-cord']],
    [
      'a cord for a youth',
      { sizes: 'S, M', facts: 'fits: {table: youth, sizes: [14, 16]}', body: cord },
      ['child-neck-cord: S'],
    ],
    [
      'a ribbon among the notions',
      { sizes: 'Age 4', facts: 'notions: [1 m of ribbon]', title: 'Quay Cape' },
      ['child-neck-cord'],
    ],
    ['buttons for a baby', { sizes: '6 months, 12 months', body: buttons }, ['child-small-parts']],
    [
      'buttons among the notions',
      { sizes: 'Baby, Child', facts: 'notions: ["buttons (3)"]' },
      ['child-small-parts: Baby'],
    ],
    [
      'beads by the baby table',
      { sizes: 'A, B', facts: 'fits: {table: baby, sizes: [12 months, 24 months]}\nfinish: [bead]' },
      ['child-small-parts'],
    ],
    ['a pompom', { sizes: 'Toddler', body: 'Attach a pompom to the top.' }, ['child-small-parts']],
    ['by title alone', { title: 'Baby Vest', sizes: 'One size', body: buttons }, ['child-small-parts']],
    [
      'safety eyes on a toy',
      { title: 'A Toy Crab', sizes: 'One size', body: 'Place the safety eyes.' },
      ['toy-small-parts'],
    ],
    [
      'safety eyes among the notions',
      { title: 'Crab', sizes: 'One size', facts: 'notions: [safety eyes]' },
      ['toy-small-parts'],
    ],
    ['fringe', { sizes: 'Age 2, Age 10', body: 'Knot the fringe into the edge.' }, ['child-fringe: Age 2']],
    [
      'tassels among the finishes',
      { sizes: 'Child', facts: 'finish: [{tassel: {length: 12 cm, wraps: 30}}]' },
      ['child-fringe'],
    ],
    ['a blanket for a baby', { title: 'Quay Baby Blanket', sizes: 'One size' }, ['baby-cover']],
    ['a blanket by its sizes', { title: 'Quay Blanket', sizes: 'Pram, Cot, Single bed' }, ['baby-cover: Pram, Cot']],
    [
      'a blanket by its summary',
      { title: 'Quay', summary: 'A blanket for the cot.', sizes: 'One size' },
      ['baby-cover'],
    ],
    ['a hat for a baby among others', { title: 'Quay Hat', sizes: 'Baby, Adult' }, ['baby-hat: Baby']],
    [
      'a hat by the head table',
      { title: 'Quay Hat', sizes: 'A, B', facts: 'fits: {table: head, sizes: [Baby, Woman]}' },
      ['baby-hat: A'],
    ],
    ['a blanket by its kind', { title: 'Quay', sizes: 'One size', facts: 'kind: baby blanket' }, ['baby-cover']],
    ['nightwear', { title: 'Quay Sleep Sack', sizes: 'Age 2, Age 4' }, ['child-nightwear']],
    [
      'a passage for the youngest',
      { sizes: 'Baby, Toddler, Child', body: ':::sizes{only="Toddler, Child"}\nSew the buttons to the band.\n:::' },
      ['child-small-parts: Toddler'],
    ],
  ])('%s', (_, told, expected) => {
    expect(cautions(told)).toEqual(expected)
  })
})

describe('drafts that call for none', () => {
  it.each<readonly [what: string, told: Told]>([
    [
      'adult sizes',
      {
        sizes: 'XS, S, M',
        facts: 'fits: {table: women, sizes: [X-Small, Small, Medium]}',
        body: `${cord}\n\n${buttons}`,
      },
    ],
    ['sizes without ages', { sizes: 'S, M, L', body: `${cord}\n\n${buttons}` }],
    ['adults by name', { title: 'Family Hoodie', sizes: 'Women S, Men M', body: cord }],
    ['children and no cord', { sizes: 'Age 4, Age 6', body: 'Weave in the ends. Tie off.' }],
    ['a cord that is not there', { sizes: 'Age 4', body: 'It has no tie or cord at the neck, for cords catch.' }],
    ['a cord left out', { sizes: 'Age 4', body: 'Close the neck with a snug edge instead of a cord.' }],
    ['buttons from three', { sizes: '3T, Age 4, Child', body: buttons }],
    ['buttonholes alone', { sizes: '6 months', body: 'Work three buttonholes into the band and sew it down.' }],
    ['a bead stitch', { sizes: '6 months', body: 'Work a bead stitch in each corner.' }],
    ['stitch markers and corduroy', { sizes: '6 months', facts: 'notions: [stitch marker, corduroy lining]' }],
    ['fringe for the older', { sizes: 'Age 8, Age 10', body: 'Knot the fringe into the edge.' }],
    ['a blanket for grown-ups', { title: 'Quay Blanket', sizes: 'Lap, Double' }],
    ['baby alpaca', { title: 'Quay Blanket in baby alpaca', sizes: 'One size' }],
    ['a metre', { title: 'Quay Blanket', sizes: '1 m, 2 m' }],
    ['a name that is no thing', { title: 'Button Bead Lane', sizes: '6 months' }],
    [
      'a cord for grown-ups in a family',
      { sizes: 'Child, Adult', body: `:::sizes{only="Adult"}\n${cord.split('\n').at(-1)}\n:::` },
    ],
    ['a hat for a toddler', { title: 'Quay Hat', sizes: 'Toddler, Child' }],
    ['a toy with embroidered eyes', { title: 'A Toy Crab', sizes: 'One size', body: 'Embroider the eyes.' }],
  ])('%s', (_, told) => {
    expect(cautions(told)).toEqual([])
  })
})

describe('a caution', () => {
  const { text, value, diagnostics } = read({
    sizes: 'Baby, Age 4',
    facts: 'notions: ["buttons (3)"]\nfinish: [pompom]',
    body: cord,
  })

  it('names its things, its source and the rules of the place', () => {
    const [neck, parts] = value?.cautions ?? []
    expect(parts?.text).toMatch(/^Buttons and pompoms can come off/)
    expect(neck?.sizes).toBeNull()
    expect(parts?.sizes).toEqual([0])
    for (const { text: words, source } of value?.cautions ?? []) {
      expect(words).toMatch(/rules that apply where you live\.$/)
      expect(source).toMatch(/\(.*\d{4}.*\)$/)
    }
  })

  it('stands as a finding where the draft says the thing, never as an error', () => {
    const found = diagnostics.map(({ code, severity, at }) => [code, severity, text.slice(at.start, at.end)])
    expect(found).toEqual([
      ['child-small-parts', 'note', 'buttons'],
      ['child-neck-cord', 'warning', 'cord'],
    ])
  })

  it('stays for readers where the designer accepts the finding', () => {
    const accepted = read({
      sizes: 'Age 4',
      facts: 'accepted: [{code: child-neck-cord, at: Thread a cord, why: It is for the stage.}]',
      body: cord,
    })
    expect(accepted.diagnostics.map(({ severity, accepted: why }) => [severity, why])).toEqual([
      ['note', 'It is for the stage.'],
    ])
    expect(accepted.value?.cautions).toHaveLength(1)
  })
})
