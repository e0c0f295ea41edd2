import { existsSync, readFileSync } from 'node:fs'
import { basename, dirname } from 'node:path'
import type { Root } from 'mdast'
import type { Processor, Transformer } from 'unified'
import type { VFile } from 'vfile'
import { createSource } from '../src/diagnostic/index.ts'
import type { Solver } from '../src/formula/index.ts'
import { toMdast } from '../src/html/index.ts'
import { type Asked, listening, packRecipe } from '../src/own/recipe.ts'
import { workDraft } from '../src/pattern/resolve.ts'
import { prints } from '../src/print/printable.ts'
import { solverFor } from '../src/solver/index.ts'
import { outcomes } from './outcomes.ts'
import { besideDraft } from './read-beside.ts'
import { addDraftSyntax } from './syntax.ts'

/**
 * The bridge between a Markdown pipeline and the grading core. The text it meets is a draft; it leaves
 * the resolved pattern's text in the tree, and the pattern itself, with its findings, in
 * `file.data.sizewright` (in Astro also as `sizewright` in the page's front matter).
 *
 *     Ch {{rim_sts}}.   →   <p>Ch <span class="value">60 (72, 84)</span>.</p>
 *
 * A draft that links counts waits for the solver, so its pipeline must be an asynchronous one; any other is done at once.
 */
export function remarkSizewright(this: Processor): Transformer<Root> {
  addDraftSyntax(this.data())
  return (tree, file) => {
    const draft = wholeDraft(file)
    const loading = solverFor(draft.text)
    if (loading !== null) return loading.then((solver) => resolveIn(tree, file, draft, solver))
    resolveIn(tree, file, draft, null)
    return undefined
  }
}

function resolveIn(tree: Root, file: VFile, { text, shift }: WholeDraft, solver: Solver | null): void {
  const slug = slugOf(file)
  const source = createSource(file.path ?? slug, text)
  const beside = file.path === undefined ? null : besideDraft(file.path)
  const parse = () => ({ tree, shift })
  const asked: Asked = { beside: new Map(), answers: new Map() }
  const reach = listening({ solver, readBeside: beside?.readBeside ?? null }, asked)
  const { value, diagnostics } = workDraft({ source, slug, ...beside, ...reach, prints, parse })
  const pattern = value?.pattern ?? null
  outcomes.set(slug, { source, pattern, diagnostics })
  const recipe = value === null || value.pattern.adjustables.length === 0 ? null : packRecipe(value, asked)
  tree.children = pattern === null ? [] : toMdast(pattern.body, pattern.sizes)
  handOn(file, { pattern, diagnostics, recipe })
}

interface WholeDraft {
  readonly text: string
  readonly shift: number
}

/**
 * The draft as it stands in its file, and what brings the tree's offsets back to it. A host may hand
 * over the whole file, the file with the front matter blanked, or the body alone.
 */
function wholeDraft(file: VFile): WholeDraft {
  const given = String(file.value)
  // Markdown drops a byte order mark without counting it.
  const mark = given.startsWith('\uFEFF') ? 1 : 0
  if (/^\uFEFF?---/.test(given) || file.path === undefined || !existsSync(file.path))
    return { text: given, shift: mark }
  const text = readFileSync(file.path, 'utf8')
  return { text, shift: text.endsWith(given) ? text.length - given.length : 0 }
}

/** `content/patterns/tide-line/index.md` and `tide-line.md` are both `tide-line`. */
function slugOf(file: VFile): string {
  const stem = file.stem ?? 'pattern'
  return stem === 'index' && file.path !== undefined ? basename(dirname(file.path)) : stem
}

function handOn(file: VFile, sizewright: unknown): void {
  file.data.sizewright = sizewright
  const astro = file.data.astro
  if (typeof astro === 'object' && astro !== null && 'frontmatter' in astro) {
    Object.assign(astro.frontmatter ?? {}, { sizewright })
  }
}
