import { resolve } from 'node:path'
import { parseMarkdown, withoutFacts } from '../../plugins/markdown.ts'
import { besideDraft } from '../../plugins/read-beside.ts'
import { createSource } from '../../src/diagnostic/index.ts'
import { type OpenPattern, openRecipe } from '../../src/own/open.ts'
import { type Asked, listening, packRecipe, type Recipe } from '../../src/own/recipe.ts'
import { drawFigure } from '../../src/pattern/figures.ts'
import { workDraft } from '../../src/pattern/resolve.ts'
import { loadSolver } from '../../src/solver/index.ts'

const solver = await loadSolver()

/** The recipe of a draft as a page's script gets it: through JSON. */
export function recipeFor(slug: string, text: string): Recipe {
  const asked: Asked = { beside: new Map(), answers: new Map() }
  const { readBeside } = besideDraft(resolve('content/patterns', slug, 'index.md'))
  const { value, diagnostics } = workDraft({
    source: createSource('index.md', text),
    slug,
    ...listening({ solver, readBeside }, asked),
    parse: (bodyStart) => ({ tree: parseMarkdown(withoutFacts(text, bodyStart)), shift: 0 }),
  })
  if (value === null) throw new Error(diagnostics.map(({ message }) => message).join('\n'))
  return JSON.parse(JSON.stringify(packRecipe(value, asked)))
}

export function openDraft(slug: string, text: string): OpenPattern {
  return openRecipe(recipeFor(slug, text), { solver, draw: drawFigure })
}
