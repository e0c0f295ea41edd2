import { describe, expect, it } from 'vitest'
import { catalogue } from '../../src/diagnostic/index.ts'

/** What each file of the catalogue exports: kinds of findings by their codes. */
const files = Object.values(
  import.meta.glob<Record<string, object>>('../../src/diagnostic/catalogue/*.ts', { eager: true }),
)
const all = files.flatMap((exported) => Object.values(exported).flatMap((findings) => Object.keys(findings)))

describe('the catalogue of findings', () => {
  it('gives every code one meaning', () => {
    expect(all.filter((code, index) => all.indexOf(code) !== index)).toEqual([])
  })

  it('has those of all its files', () => {
    expect(Object.keys(catalogue).sort()).toEqual([...all].sort())
  })

  it('names codes in plain words', () => {
    expect(Object.keys(catalogue).filter((code) => !/^[a-z]+(-[a-z]+)*$/.test(code))).toEqual([])
  })
})
