import { describe, expect, test } from 'vitest'
import type { Block, RowBlock } from '../../src/pattern/node.ts'
import { htmlOf, text } from './to-html.ts'

const paragraph = (words: string): Block => ({ type: 'paragraph', children: [text(words)] })

const row = (id: string, rest: Partial<RowBlock> = {}): RowBlock => ({
  type: 'row',
  id,
  label: [text('Rnd 2:')],
  steps: [text('Ch 1, sc around.')],
  stated: [text('(60 sc)')],
  entries: [1, 2],
  times: 1,
  moment: null,
  only: null,
  ...rest,
})

const rowHtml = (id: string): string =>
  `<li class="row" id="${id}"><span class="row-label">Rnd 2:</span> <span class="row-steps">Ch 1, sc around.</span> <span class="row-stated">(60 sc)</span></li>`

const cases: readonly [what: string, blocks: Block[], html: string][] = [
  ['paragraph', [paragraph('a')], '<p>a</p>'],
  ['heading', [{ type: 'heading', depth: 3, id: 'x', children: [text('Cowl')] }], '<h3 id="x">Cowl</h3>'],
  [
    'first heading, below the title of the page',
    [{ type: 'heading', depth: 1, id: 'x', children: [text('Cowl')] }],
    '<h2 id="x">Cowl</h2>',
  ],
  [
    'list',
    [{ type: 'list', ordered: false, start: 1, items: [[paragraph('a')], [paragraph('b')]] }],
    '<ul><li>a</li><li>b</li></ul>',
  ],
  [
    'numbered list from 3, with room between its items',
    [{ type: 'list', ordered: true, start: 3, items: [[paragraph('a'), paragraph('b')], [paragraph('c')]] }],
    '<ol start="3"><li><p>a</p><p>b</p></li><li><p>c</p></li></ol>',
  ],
  [
    'table',
    [
      {
        type: 'table',
        align: ['left', 'right', null],
        head: [[text('A')], [text('B')], [text('C')]],
        rows: [[[text('a')], [text('1')], []]],
      },
    ],
    '<div class="table-box" role="group" aria-label="Table" tabindex="0"><table><thead><tr><th scope="col" class="align-left">A</th><th scope="col" class="align-right">B</th><th scope="col">C</th></tr></thead><tbody><tr><td class="align-left">a</td><td class="align-right">1</td><td></td></tr></tbody></table></div>',
  ],
  ['quote', [{ type: 'quote', children: [paragraph('a')] }], '<blockquote><p>a</p></blockquote>'],
  ['code', [{ type: 'codeBlock', text: '{{x}} <b>' }], '<pre><code>{{x}} &#x3C;b></code></pre>'],
  ['rule', [{ type: 'rule' }], '<hr>'],
  [
    'blocks for some sizes',
    [{ type: 'only', sizes: [1, 2], children: [paragraph('a')] }],
    '<div class="only s1 s2"><p class="only-for c">Sizes Adult S and Adult L only</p><p>a</p></div>',
  ],
]

describe('a block', () => {
  test.each(cases)('%s', (_, blocks, html) => {
    expect(htmlOf(...blocks)).toBe(html)
  })
})

describe('rows', () => {
  test('that follow each other are one list', () => {
    const html = htmlOf(row('a'), row('b'), paragraph('Turn the work.'), row('c'))
    expect(html).toBe(
      `<ol class="rows" role="list">${rowHtml('a')}${rowHtml('b')}</ol><p>Turn the work.</p><ol class="rows" role="list">${rowHtml('c')}</ol>`,
    )
  })

  test('in a list of their own need no second list', () => {
    const html = htmlOf({ type: 'list', ordered: false, start: 1, items: [[row('a')], [row('b')]] })
    expect(html).toBe(`<ol class="rows" role="list">${rowHtml('a')}${rowHtml('b')}</ol>`)
  })

  test('beside other items stay in the list that they were written in', () => {
    const html = htmlOf({ type: 'list', ordered: false, start: 1, items: [[paragraph('a')], [row('b')]] })
    expect(html).toBe(`<ul><li>a</li><li><ol class="rows" role="list">${rowHtml('b')}</ol></li></ul>`)
  })

  test('without label and stated count have neither', () => {
    expect(htmlOf(row('a', { label: [], stated: [] }))).toBe(
      '<ol class="rows" role="list"><li class="row" id="a"><span class="row-steps">Ch 1, sc around.</span></li></ol>',
    )
  })

  test('for some sizes carry their sizes', () => {
    expect(htmlOf(row('a', { only: [0, 2] }))).toContain('<li class="row only s0 s2" id="a">')
  })
})
