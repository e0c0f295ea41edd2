import { expect, it } from 'vitest'
import * as grading from '../../src/grading/index.ts'

it('grading offers these and no more', () => {
  expect(Object.keys(grading).sort()).toEqual([
    'bodyMeasure',
    'createEnvironment',
    'readFits',
    'readGauge',
    'readSwatches',
    'toFit',
    'usHook',
    'wearersOf',
    'yarnCategoryName',
    'yarnCategoryNumber',
  ])
})
