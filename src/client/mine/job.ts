import type { Pattern } from '../../pattern/pattern.ts'
import type { Choice, Form, PrintOptions } from '../../print/index.ts'

/** What the site has beside a pattern for its print-outs, as JSON. */
export interface PrintParts {
  readonly words: Pick<PrintOptions, 'studio' | 'page' | 'numbers'>
  /** Pictures by the `src` that the pattern gives them, in base64. */
  readonly images: Readonly<Record<string, string>>
}

/** Where the parts of a print-out lie; whole addresses. */
export interface Places {
  readonly pattern: string
  readonly parts: string
  /** The folder of the typefaces, with a slash at its end. */
  readonly typefaces: string
}

/** A print-out as a reader wants it. */
export interface MineJob {
  readonly places: Places
  /** Numbers of the reader's own, in the place of the published ones; null for these. */
  readonly own: Pattern | null
  readonly choice: Choice
  readonly form: Form
  readonly paper: PrintOptions['paper']
}

/** What comes back: the file, or null where something could not be had. */
export type MineReply = Uint8Array<ArrayBuffer> | null
