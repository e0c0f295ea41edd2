import type { BlockContent, PhrasingContent } from 'mdast'
import type { Block, Inline } from '../pattern/node.ts'
import type { Stops } from './stops.ts'

/** What a handler needs beside its node: the names of the sizes, and the way back to the tables. */
export interface Context {
  /** In the draft's order of sizes. */
  readonly sizes: readonly string[]
  readonly stops: Stops
  readonly blocks: (blocks: readonly Block[]) => BlockContent[]
  readonly inlines: (inlines: readonly Inline[]) => PhrasingContent[]
}
