import { expect, it } from 'vitest'
import * as formula from '../../src/formula/index.ts'

it('the formula language offers these and no more', () => {
  expect(Object.keys(formula).sort()).toEqual([
    'asAimed',
    'countedBy',
    'evaluate',
    'functions',
    'plainBySize',
    'printExpression',
    'printStatement',
    'printValue',
    'readFormula',
    'readGrading',
    'roundedIn',
    'roundingsOf',
    'settle',
    'tokenize',
    'unroundedIn',
    'usesLedger',
    'wholeBySize',
  ])
})
