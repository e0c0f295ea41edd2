import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative, resolve, sep } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { fileURLToPath, pathToFileURL } from 'node:url'
import type { Loader, LoaderContext } from 'astro/loaders'
import { createSource, type Diagnostic } from '../src/diagnostic/index.ts'
import type { Recipe } from '../src/own/recipe.ts'
import { findFrontMatter } from '../src/pattern/front-matter.ts'
import type { Pattern } from '../src/pattern/pattern.ts'
import { type Finding, findingsOf } from '../src/proof/finding.ts'
import { withoutFacts } from './markdown.ts'
import { pictureAt } from './read-beside.ts'

/** What a page gets of a draft: the pattern, or why there is none. */
export interface DraftEntry extends Record<string, unknown> {
  readonly pattern: Pattern | null
  readonly findings: readonly Finding[]
  /** What a reader's own numbers are worked from; null where the draft allows none. */
  readonly recipe: Recipe | null
  readonly coverImage?: string
}

/** Loads every `<base>/<slug>/index.md` as a draft; in preview again at every save. */
export function drafts({ base }: { base: string }): Loader {
  return {
    name: 'drafts',
    load: async (context) => {
      const folder = resolve(fileURLToPath(context.config.root), base)
      context.store.clear()
      for (const slug of slugsIn(folder)) await loadDraft(slug, folder, context)
      watch(folder, context)
    },
  }
}

/** Folders with an `index.md`, in the order of the alphabet. */
function slugsIn(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
}

/** Puts one draft into the store, with its findings. Gives back the text that it was read from. */
async function loadDraft(slug: string, folder: string, context: LoaderContext): Promise<string | null> {
  const path = join(folder, slug, 'index.md')
  const text = readText(path)
  if (text === null) return null
  const rendered = await context.renderMarkdown(forHost(text), { fileURL: pathToFileURL(path) })
  const { pattern, diagnostics, recipe } = resolved(rendered.metadata?.frontmatter)
  const filePath = relative(fileURLToPath(context.config.root), path)
  const findings = findingsOf(createSource(filePath, text), pattern?.sizes ?? [], diagnostics)
  const cover = pattern?.cover?.src
  const isThere = cover !== undefined && pictureAt(resolve(dirname(path), cover)) === 'picture'
  const entry: DraftEntry = { pattern, findings, recipe, ...(isThere ? { coverImage: cover } : {}) }
  const data = await context.parseData({ id: slug, data: entry, filePath })
  const body = { html: rendered.html, metadata: { ...rendered.metadata, frontmatter: {} } }
  context.store.set({ id: slug, data, filePath, rendered: body, assetImports: rendered.metadata?.imagePaths ?? [] })
  return text
}

/** Watchers pass over a save that comes so soon after another (milliseconds). */
const soon = 150

/** Loads a draft one load after the other, and once more where it has been saved meanwhile. */
function reloading(folder: string, context: LoaderContext): (slug: string) => Promise<void> {
  const running = new Map<string, Promise<void>>()
  const settle = async (slug: string): Promise<void> => {
    let read = await loadDraft(slug, folder, context)
    await setTimeout(soon)
    for (let now = readText(join(folder, slug, 'index.md')); now !== null && now !== read; ) {
      read = await loadDraft(slug, folder, context)
      now = readText(join(folder, slug, 'index.md'))
    }
  }
  return (slug) => {
    const next = (running.get(slug) ?? Promise.resolve()).then(() => settle(slug))
    running.set(
      slug,
      next.catch(() => undefined),
    )
    return next
  }
}

function readText(path: string): string | null {
  try {
    return readFileSync(path, 'utf8')
  } catch {
    return null
  }
}

/** The host would cut the front matter off and move every offset; blanks in its place keep them. */
function forHost(text: string): string {
  return withoutFacts(text, findFrontMatter(createSource('', text)).value?.bodyStart ?? 0)
}

/** What the remark plugin left in the front matter. */
function resolved(frontmatter: Record<string, unknown> | undefined): {
  pattern: Pattern | null
  diagnostics: readonly Diagnostic[]
  recipe: Recipe | null
} {
  const left: unknown = frontmatter?.sizewright
  if (!isResolved(left))
    throw new Error('The remark plugin of sizewright is not in this site’s Markdown configuration.')
  return left
}

function isResolved(value: unknown): value is ReturnType<typeof resolved> {
  return (
    typeof value === 'object' && value !== null && 'pattern' in value && 'diagnostics' in value && 'recipe' in value
  )
}

/** What a draft is made of beside its text: a body table, pictures. */
const parts = /\.(?:csv|png|jpe?g|webp|avif|gif|svg|tiff?)$/i

function watch(folder: string, context: LoaderContext): void {
  context.watcher?.add(folder)
  const load = reloading(folder, context)
  const reload = async (path: string): Promise<void> => {
    const [slug, file] = relative(folder, path).split(sep)
    const concerns = file === 'index.md' || parts.test(path)
    if (slug !== undefined && slug !== '..' && concerns) await load(slug)
  }
  context.watcher?.on('change', reload)
  context.watcher?.on('add', reload)
  context.watcher?.on('unlink', async (path) => {
    const [slug, file] = relative(folder, path).split(sep)
    if (slug !== undefined && file === 'index.md') context.store.delete(slug)
    else await reload(path)
  })
}
