import type { PageNumbers } from '../../own/page.ts'
import type { Trouble } from '../../own/troubles.ts'
import type { Changes } from '../../pattern/own/changes.ts'
import type { Adjustable, Pattern } from '../../pattern/pattern.ts'

/** What the page asks of the worker in which patterns are worked anew. */
export type Question =
  /** The address of the recipe. */
  | { readonly kind: 'open'; readonly recipe: string }
  | { readonly kind: 'work'; readonly changes: Changes }
  /** What was worked last, whole. */
  | { readonly kind: 'pattern' }

export type Reply =
  | { readonly kind: 'open'; readonly adjustables: readonly Adjustable[] }
  | { readonly kind: 'worked'; readonly page: PageNumbers; readonly troubles: readonly Trouble[] }
  | { readonly kind: 'pattern'; readonly pattern: Pattern }
  | { readonly kind: 'failed' }
