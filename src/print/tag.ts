/** Structure types of PDF 1.7 (ISO 32000-1, 14.8.4) that the print-out uses. */
export type Role =
  | 'Document'
  | `H${1 | 2 | 3 | 4 | 5 | 6}`
  | 'P'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'BlockQuote'
  | 'Code'
  | 'Figure'
  | 'Link'
  | 'Div'

/**
 * A place in the document's structure, for readers who listen. Its order among the children of `parent`
 * is the order in which they are first drawn or announced.
 */
export interface Tag {
  readonly role: Role
  readonly parent: Tag | null
  /** What a picture shows. */
  readonly alt?: string
  /** What a header cell is the header of. */
  readonly scope?: 'Row' | 'Column'
  /** How the items of a list are labelled (ISO 32000-1, table 347). */
  readonly numbering?: 'None' | 'Disc' | 'Decimal'
  /** Abbreviations in it are read as they are written: it explains them. */
  readonly asWritten?: boolean
}

export function tag(role: Role, parent: Tag, more: Omit<Tag, 'role' | 'parent'> = {}): Tag {
  return { role, parent, ...more }
}
