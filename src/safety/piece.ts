import type { Span } from '../diagnostic/index.ts'

/** Words of a draft that may say what the piece is, or what it carries. */
export interface Said {
  /**
   * `title`: the pattern's title, summary or kind; `material`: a notion or a finish, which the piece carries for certain;
   * `heading`, `row` and `text` are the body's.
   */
  readonly where: 'title' | 'material' | 'heading' | 'row' | 'text'
  readonly text: string
  /** Where the text stands, character for character. */
  readonly at: Span
  /** Title of the section; null above the first heading. */
  readonly section: string | null
  /** Positions of the only sizes it is for; null for all. */
  readonly only: readonly number[] | null
}

/** What a draft tells about who the piece is for and what it carries. */
export interface Piece {
  /** Names of the sizes, in the draft's order. */
  readonly sizes: readonly string[]
  /** The body table's name and, for each size, the column that it is drawn on; null where there is none. */
  readonly table: string | null
  readonly columns: readonly (string | null)[]
  /** In the order of the draft. */
  readonly said: readonly Said[]
}
