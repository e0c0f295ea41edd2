import { expect, test } from 'vitest'
import { outline } from '../../src/html/index.ts'
import { textForAll } from '../../src/measure/index.ts'
import type { Block } from '../../src/pattern/node.ts'
import { text } from './to-html.ts'

test('the outline has the highest headings, as a reader of all sizes sees them', () => {
  const body: Block[] = [
    {
      type: 'heading',
      depth: 2,
      id: 'cowl',
      children: [
        { type: 'strong', children: [text('Cowl')] },
        text(', '),
        {
          type: 'value',
          id: 'v1',
          segments: [
            { text: '10', show: 0 },
            { text: ' (12)', show: 'columns' },
          ],
        },
      ],
    },
    { type: 'paragraph', children: [text('Work in rounds.')] },
    { type: 'heading', depth: 3, id: 'edge', children: [text('Edge')] },
    { type: 'heading', depth: 1, id: 'notes', children: [text('Notes')] },
  ]
  expect(outline(body).map(({ id, text }) => ({ id, text: textForAll(text) }))).toEqual([
    { id: 'cowl', text: 'Cowl, 10 (12)' },
    { id: 'notes', text: 'Notes' },
  ])
})
