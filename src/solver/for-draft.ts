import type { Solver } from '../formula/index.ts'
import { loadSolver } from './highs.ts'

/** A name with a sign `~` after it. Prose may hold one too, and then the solver is loaded for nothing. */
const link = /[\p{L}\p{M}\p{N}_][^\S\n]*~(?!~)/u

/** The solver on its way, for a draft that may link counts; null for any other, and nothing is loaded. */
export function solverFor(text: string): Promise<Solver> | null {
  return link.test(text) ? loadSolver() : null
}
