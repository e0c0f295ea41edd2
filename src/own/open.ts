import type { Diagnostic } from '../diagnostic/index.ts'
import type { Solver } from '../formula/index.ts'
import type { DrawFigure } from '../pattern/figures.ts'
import type { Changes } from '../pattern/own/changes.ts'
import { rework } from '../pattern/own/rework.ts'
import type { Pattern } from '../pattern/pattern.ts'
import { type Means, workPattern } from '../pattern/work.ts'
import { namelessAnchors, withAnchors } from './anchors.ts'
import { type Recipe, unpackRecipe } from './recipe.ts'
import { type Trouble, troublesOf } from './troubles.ts'

/** A published pattern that can be worked anew. */
export interface OpenPattern {
  readonly published: Pattern
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

/** Works a recipe as it was published, and then as often as wanted with what a reader changes. */
export function openRecipe(recipe: Recipe, { solver, draw }: Extras): OpenPattern {
  const { draft, reach } = unpackRecipe(recipe, solver)
  const means: Means = { ...reach, draw, anchors: namelessAnchors }
  const findings: Diagnostic[] = []
  const published = workPattern(draft, means, findings)
  return {
    published: withAnchors(published.pattern, recipe.anchors),
    work: (changes) => {
      const { value, diagnostics } = rework(published, changes, means)
      const troubles = troublesOf(diagnostics, findings, value.pattern)
      return { pattern: withAnchors(value.pattern, recipe.anchors), troubles }
    },
  }
}
