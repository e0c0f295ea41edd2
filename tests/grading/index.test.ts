import { expect, it } from 'vitest'
import * as grading from '../../src/grading/index.ts'

it('grading offers these and no more', () => {
  expect(Object.keys(grading).sort()).toEqual([
    'bodyMeasure',
    'categoriesNamed',
    'createEnvironment',
    'gaugeOf',
    'headsOf',
    'isOneHook',
    'isWithin',
    'millimetresOf',
    'publishedYarn',
    'reachOf',
    'readFits',
    'readGauge',
    'readHookName',
    'readSwatches',
    'sortClaims',
    'stepOf',
    'toFit',
    'usHook',
    'wearersOf',
    'yarnCategoryName',
    'yarnCategoryNumber',
    'yarnNames',
  ])
})
