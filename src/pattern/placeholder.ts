import type { Literal } from 'mdast'

/**
 * `{{ formula }}` in a draft's text, as a node of the Markdown tree. `value` is the formula without
 * its braces, exactly as typed; `position` covers the braces.
 */
export interface Placeholder extends Literal {
  type: 'placeholder'
}

declare module 'mdast' {
  interface PhrasingContentMap {
    placeholder: Placeholder
  }
  interface RootContentMap {
    placeholder: Placeholder
  }
}
