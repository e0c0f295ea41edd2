import { type OpenPattern, openRecipe } from '../../own/open.ts'
import { pageNumbers } from '../../own/page.ts'
import type { Recipe } from '../../own/recipe.ts'
import type { Question, Reply } from './messages.ts'

/**
 * Works a pattern anew beside the page, which stays as quick as it was: the same core that made the page, and the same
 * functions that made its HTML.
 */
let pattern: OpenPattern | null = null

addEventListener('message', ({ data }: MessageEvent<Question>) => {
  answer(data).then(
    (reply) => postMessage(reply),
    () => postMessage({ kind: 'failed' } satisfies Reply),
  )
})

async function answer(question: Question): Promise<Reply> {
  if (question.kind === 'open') {
    pattern = openRecipe(await load(question.recipe))
    return { kind: 'open', adjustables: pattern.published.adjustables }
  }
  if (pattern === null) return { kind: 'failed' }
  const worked = pattern.work(question.changes)
  return { kind: 'worked', page: pageNumbers(worked.pattern), troubles: worked.troubles }
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
