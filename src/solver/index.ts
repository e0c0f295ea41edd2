export type { Answer, Column, Program, Row, Solver, Term } from '../formula/index.ts'
export { solverFor } from './for-draft.ts'
export { loadSolver } from './highs.ts'
