import type { Diagnostic } from '../diagnostic/index.ts'
import type { Solver } from '../formula/index.ts'
import type { Draft } from '../pattern/draft.ts'
import type { DrawFigure } from '../pattern/figures.ts'
import type { Changes } from '../pattern/own/changes.ts'
import { rework } from '../pattern/own/rework.ts'
import type { Pattern } from '../pattern/pattern.ts'
import { type Means, type Worked, workPattern } from '../pattern/work.ts'
import { namelessAnchors, withAnchors } from './anchors.ts'
import { type Recipe, unpackRecipe } from './recipe.ts'
import { type Trouble, troublesOf } from './troubles.ts'

/** A published pattern that can be worked anew. */
export interface OpenPattern {
  readonly published: () => Pattern
  readonly work: (changes: Changes) => OwnPattern
}

/** A pattern with a reader's own numbers, and what does not come out with them. */
export interface OwnPattern {
  readonly pattern: Pattern
  readonly troubles: readonly Trouble[]
}

/** What a recipe may call for and not every one does. */
export interface Extras {
  /** For linked counts that come to other problems than the build has solved. */
  readonly solver: Solver | null
  /** For drawings in the text. */
  readonly draw: DrawFigure | null
}

/**
 * Opens a recipe, to be worked as it was published and then as often as wanted with what a reader changes. Nothing is worked
 * before it is asked for.
 */
export function openRecipe(recipe: Recipe, { solver, draw }: Extras): OpenPattern {
  const { draft, reach } = unpackRecipe(recipe, solver)
  const means: Means = { ...reach, draw, anchors: namelessAnchors }
  let before: { readonly value: Worked; readonly findings: readonly Diagnostic[] } | null = null
  const published = () => {
    before ??= asPublished(draft, means)
    return before
  }
  return {
    published: () => withAnchors(published().value.pattern, recipe.anchors),
    work: (changes) => {
      const { value, diagnostics } = rework(published().value, changes, means)
      const troubles = troublesOf(diagnostics, published().findings, value.pattern)
      return { pattern: withAnchors(value.pattern, recipe.anchors), troubles }
    },
  }
}

function asPublished(draft: Draft, means: Means): { readonly value: Worked; readonly findings: readonly Diagnostic[] } {
  const findings: Diagnostic[] = []
  return { value: workPattern(draft, means, findings), findings }
}
