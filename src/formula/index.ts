export { asAimed } from './aim.ts'
export type {
  BodyFound,
  EaseFound,
  Environment,
  Gauge,
  GaugeFound,
  MadeQuery,
  RepeatFound,
  Skein,
} from './environment.ts'
export type { FunctionFact, FunctionName } from './functions.ts'
export { functions } from './functions.ts'
export type { Answer, Column, Program, Row, Solver, Term } from './linked/program.ts'
export type { CountedBy, Moved } from './moved.ts'
export { countedBy, roundedIn, roundingsOf } from './moved.ts'
export { printExpression, printStatement } from './print.ts'
export type { Settled } from './settle.ts'
export { evaluate, settle, usesLedger } from './settle.ts'
export type { Shape, Shaped, ShapingName, ShapingProblem } from './shaping.ts'
export { plainBySize, printValue, wholeBySize } from './show.ts'
export { readFormula, readGrading } from './statement.ts'
export type { Origin } from './token.ts'
export { tokenize } from './token.ts'
export type { Expression, Formula, Statement } from './tree.ts'
export { unroundedIn } from './unrounded.ts'
