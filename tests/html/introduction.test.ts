import { expect, test } from 'vitest'
import { cutIntroduction } from '../../src/html/index.ts'
import type { Block } from '../../src/pattern/node.ts'
import { htmlOf, text } from './to-html.ts'

const paragraph: Block = { type: 'paragraph', children: [text('Slack water is short; id="notes"')] }
const notes: Block = { type: 'heading', depth: 2, id: 'notes', children: [text('Notes')] }
const inner: Block = {
  type: 'only',
  sizes: [0],
  children: [{ type: 'heading', depth: 2, id: 'child', children: [text('Child')] }],
}

const cases: readonly [what: string, body: Block[], introduction: Block[], instructions: Block[]][] = [
  ['prose, then a heading', [paragraph, notes, paragraph], [paragraph], [notes, paragraph]],
  ['a heading at once', [notes, paragraph], [], [notes, paragraph]],
  ['no heading', [paragraph], [], [paragraph]],
  ['a heading within words for one size does not count', [inner, notes], [inner], [notes]],
  ['nothing', [], [], []],
]

test('above the first row there is a place for a notice', () => {
  const { instructions } = cutIntroduction(
    '<h2 id="a">A</h2><ol class="rows" role="list"></ol><ol class="rows"></ol>',
    [],
  )
  expect(instructions).toMatch(
    /^<h2 id="a">A<\/h2><p class="place-notice hint" hidden>[^<]+<\/p><ol class="rows" role="list"><\/ol><ol class="rows"><\/ol>$/,
  )
})

test.each(cases)('%s', (_, body, introduction, instructions) => {
  expect(cutIntroduction(htmlOf(...body), body)).toEqual({
    introduction: htmlOf(...introduction),
    instructions: htmlOf(...instructions),
  })
})
