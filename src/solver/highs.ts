import type { Highs, InitOptions, Model, ModelData } from 'highs'
import type { Answer, Program, Solver } from '../formula/index.ts'

/** Tries before a problem is given up; a count of tries, so that every machine gives up alike. */
const mostNodes = 2000

/** Far more than any draft that was meant takes; without it, one made to be hard could stop a build for good. */
const mostSeconds = 10

/**
 * Exact as far as the solver goes, and without the searches by which it finds good answers to large problems early: ours
 * are small, and these took most of the time.
 */
const options = {
  output_flag: false,
  random_seed: 0,
  mip_max_nodes: mostNodes,
  time_limit: mostSeconds,
  mip_rel_gap: 0,
  mip_abs_gap: 0,
  mip_heuristic_effort: 0,
  mip_heuristic_run_feasibility_jump: false,
  mip_allow_restart: false,
  mip_detect_symmetry: false,
}

/** The finest first: where its last digits come out wrong by a little more than that, the solver reports an error. */
const tolerances = [1e-9, 1e-7, 1e-6]

let loading: Promise<Solver> | undefined

/**
 * The integer-programming library HiGHS, compiled to WebAssembly, as a plain function. It is loaded once, when it is
 * first asked for; in a browser its `highs.wasm` lies beside its script.
 */
export function loadSolver(): Promise<Solver> {
  loading ??= import('highs').then(async ({ default: load }: { readonly default: unknown }) => {
    if (!isLoader(load)) throw new Error('The package highs no longer exports its loader.')
    const highs = await load({ print: () => {}, printErr: () => {} })
    return (program) => solve(program, highs)
  })
  return loading
}

/** Its types call it a CommonJS package, so that some compilers look for the loader one level deeper than it is. */
function isLoader(load: unknown): load is (options: InitOptions) => Promise<Highs> {
  return typeof load === 'function'
}

function solve(program: Program, highs: Highs): Answer {
  for (const tolerance of tolerances) {
    const answer = attempt(program, tolerance, highs)
    if (answer !== null) return answer
  }
  // Out of memory, for one: the next draft starts afresh.
  loading = undefined
  return { kind: 'undecided' }
}

/** Null where the solver reports an error. */
function attempt(program: Program, tolerance: number, highs: Highs): Answer | null {
  try {
    return highs.withModel(modelOf(program, highs), (model) => {
      model.options.set({
        ...options,
        mip_feasibility_tolerance: tolerance,
        primal_feasibility_tolerance: tolerance,
        dual_feasibility_tolerance: tolerance,
      })
      model.run()
      return answerOf(model, highs)
    })
  } catch {
    return null
  }
}

/** No sum of ours can fall without end, so `infeasible or unbounded` is the first of the two. */
function answerOf(model: Model, highs: Highs): Answer {
  const { optimal, infeasible, unboundedOrInfeasible } = highs.constants.modelStatus
  const status = model.getModelStatus()
  if (status === optimal) return { kind: 'solved', values: Array.from(model.getSolution().colValue) }
  return { kind: status === infeasible || status === unboundedOrInfeasible ? 'impossible' : 'undecided' }
}

function modelOf({ columns, rows }: Program, highs: Highs): ModelData {
  const { integer, continuous } = highs.constants.variableType
  const terms = rows.flatMap((row) => row.terms)
  const starts = [0]
  for (const row of rows) starts.push((starts.at(-1) ?? 0) + row.terms.length)
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost: columns.map(({ cost }) => cost),
    colLower: columns.map(({ lower }) => lower),
    colUpper: columns.map(({ upper }) => upper),
    rowLower: rows.map(({ lower }) => lower),
    rowUpper: rows.map(({ upper }) => upper),
    integrality: columns.map(({ whole }) => (whole ? integer : continuous)),
    matrix: {
      format: 'csr',
      numCols: columns.length,
      numRows: rows.length,
      starts: Int32Array.from(starts),
      indices: Int32Array.from(terms, ([column]) => column),
      values: Float64Array.from(terms, ([, factor]) => factor),
    },
  }
}
