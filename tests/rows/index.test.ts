import { expect, it } from 'vitest'
import * as rows from '../../src/rows/index.ts'

it('the module opens these functions and no others', () => {
  expect(Object.keys(rows).sort()).toEqual([
    'definesStitches',
    'dictionaryFor',
    'findRow',
    'indexesOf',
    'lastOf',
    'madeBy',
    'termsIn',
    'translated',
    'workRows',
  ])
})
