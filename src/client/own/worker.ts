import type { Answer, Program, Solver } from '../../formula/index.ts'
import { type OpenPattern, type OwnPattern, openRecipe } from '../../own/open.ts'
import { pageNumbers } from '../../own/page.ts'
import { asksForDrawings, type Recipe } from '../../own/recipe.ts'
import type { Changes } from '../../pattern/own/changes.ts'
import type { Pattern } from '../../pattern/pattern.ts'
import { loadSolver } from '../../solver/highs.ts'
import type { Question, Reply } from './messages.ts'

/**
 * Works a pattern anew beside the page, which stays as quick as it was: the same core that made the page, and the same
 * functions that made its HTML.
 */
let pattern: OpenPattern | null = null
let last: Pattern | null = null

/** Loaded for linked counts that come to a problem which the build did not solve. */
let solver: Solver | null = null
let lacksSolver = false

addEventListener('message', ({ data }: MessageEvent<Question>) => {
  answer(data).then(
    (reply) => postMessage(reply),
    () => postMessage({ kind: 'failed' } satisfies Reply),
  )
})

async function answer(question: Question): Promise<Reply> {
  if (question.kind === 'open') {
    const recipe = await load(question.recipe)
    const draw = asksForDrawings(recipe) ? (await import('../../pattern/figures.ts')).drawFigure : null
    pattern = openRecipe(recipe, { solver: solve, draw })
    // Worked while the reader fills in the form.
    setTimeout(pattern.published)
    return { kind: 'open', adjustables: recipe.adjustables }
  }
  if (question.kind === 'pattern') return last === null ? { kind: 'failed' } : { kind: 'pattern', pattern: last }
  if (pattern === null) return { kind: 'failed' }
  const worked = await work(pattern, question.changes)
  last = worked.pattern
  return { kind: 'worked', page: pageNumbers(worked.pattern), troubles: worked.troubles }
}

async function work({ work }: OpenPattern, changes: Changes): Promise<OwnPattern> {
  lacksSolver = false
  const worked = work(changes)
  if (!lacksSolver) return worked
  solver = await loadSolver()
  return work(changes)
}

function solve(program: Program): Answer {
  lacksSolver = solver === null
  return solver?.(program) ?? { kind: 'undecided' }
}

async function load(address: string): Promise<Recipe> {
  const response = await fetch(address)
  const data: unknown = await response.json()
  if (!isRecipe(data)) throw new Error('This is no recipe.')
  return data
}

/** The recipe and its reader come from one build, so a look at one part tells. */
function isRecipe(data: unknown): data is Recipe {
  return typeof data === 'object' && data !== null && 'tree' in data && 'facts' in data
}
