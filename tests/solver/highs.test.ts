import { describe, expect, it } from 'vitest'
import { type Column, loadSolver, type Row, solverFor } from '../../src/solver/index.ts'

const solver = await loadSolver()

const whole = (cost: number, upper = 10): Column => ({ lower: 0, upper, whole: true, cost })
const atLeast = (lower: number, ...factors: number[]): Row => ({
  lower,
  upper: Number.POSITIVE_INFINITY,
  terms: factors.map((factor, column) => [column, factor] as const),
})

describe('the solver', () => {
  it('finds the least cost in whole numbers', () => {
    expect(solver({ columns: [whole(2), whole(3)], rows: [atLeast(7, 2, 3)] })).toEqual({
      kind: 'solved',
      values: [2, 1],
    })
  })

  it('proves that nothing fits', () => {
    const even: Row = { lower: 5, upper: 5, terms: [[0, 2]] }
    expect(solver({ columns: [whole(1)], rows: [even] })).toEqual({ kind: 'impossible' })
  })

  it('takes a problem without rows, and one without columns', () => {
    expect(solver({ columns: [whole(1)], rows: [] })).toEqual({ kind: 'solved', values: [0] })
    expect(solver({ columns: [], rows: [] }).kind).not.toBe('impossible')
  })

  it('answers the same problem alike, whatever it was asked in between', () => {
    const problem = { columns: [whole(1), whole(1), whole(1)], rows: [atLeast(7, 1, 1, 1)] }
    const first = solver(problem)
    solver({ columns: [whole(2), whole(3)], rows: [atLeast(7, 2, 3)] })
    expect(solver(problem)).toEqual(first)
  })
})

describe('the solver is loaded for drafts that may link counts', () => {
  const cases: readonly (readonly [string, string, boolean])[] = [
    ['a linked count', '```grading\nfront ~ 60 as odd\n```', true],
    ['one without blanks', '```grading\nvoorzijde_1~60\n```', true],
    ['a name with accents', 'façade\u0301 ~ 60', true],
    ['none', '```grading\nfront = 60\n```', false],
    ['a fence of tildes', '~~~grading\nfront = 60\n~~~', false],
    ['words struck out', 'Work ~~five~~ six rows.', false],
  ]
  it.each(cases)('%s', (_, text, loads) => {
    expect(solverFor(text) !== null).toBe(loads)
  })
})
