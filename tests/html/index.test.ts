import { expect, test } from 'vitest'
import * as html from '../../src/html/index.ts'

test('the part offers a short list of names', () => {
  expect(Object.keys(html).sort()).toEqual([
    'cutIntroduction',
    'isLinkAddress',
    'onlyClass',
    'outline',
    'readerJson',
    'segmentsHtml',
    'sizeClass',
    'spokenCss',
    'spokenVersion',
    'toMdast',
  ])
})
