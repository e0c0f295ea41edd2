import { describe, expect, it } from 'vitest'
import { draftFindings } from '../../src/diagnostic/catalogue/draft.ts'
import { formulaFindings } from '../../src/diagnostic/catalogue/formula.ts'
import { proofFindings } from '../../src/diagnostic/catalogue/proof.ts'
import { readerNeedsFindings } from '../../src/diagnostic/catalogue/reader-needs.ts'
import { rowFindings } from '../../src/diagnostic/catalogue/rows.ts'
import { yarnFindings } from '../../src/diagnostic/catalogue/yarn.ts'
import { catalogue } from '../../src/diagnostic/index.ts'

describe('the catalogue of findings', () => {
  it('gives every code one meaning', () => {
    const all = [draftFindings, formulaFindings, rowFindings, proofFindings, yarnFindings, readerNeedsFindings].flatMap(
      (group) => Object.keys(group),
    )
    expect(all.filter((code, index) => all.indexOf(code) !== index)).toEqual([])
    expect(Object.keys(catalogue)).toHaveLength(all.length)
  })

  it('names codes in plain words', () => {
    expect(Object.keys(catalogue).filter((code) => !/^[a-z]+(-[a-z]+)*$/.test(code))).toEqual([])
  })
})
