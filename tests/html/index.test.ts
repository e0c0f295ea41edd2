import { expect, test } from 'vitest'
import * as html from '../../src/html/index.ts'

test('the part offers a short list of names', () => {
  expect(Object.keys(html).sort()).toEqual([
    'bodyHtml',
    'contentsHtml',
    'cutIntroduction',
    'elementHandlers',
    'isLinkAddress',
    'onlyClass',
    'outline',
    'partHtml',
    'partNames',
    'readerData',
    'readerJson',
    'segmentsHtml',
    'sizeClass',
    'spokenCss',
    'spokenVersion',
    'toMdast',
  ])
})
