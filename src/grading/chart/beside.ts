/** A file that lies beside the draft, as it was read from outside the core, or why it could not be. */
export type FileBeside =
  | { readonly kind: 'text'; readonly text: string }
  /** `nowhere`: the draft itself lies in no folder, as when it comes from standard input. */
  | { readonly kind: 'missing' | 'not-text' | 'too-long' | 'nowhere' }

/** Reads a file of the draft's folder by a path that stays inside it: `measures.csv`, `tables/girth.csv`. */
export type ReadBeside = (path: string) => FileBeside

/** Whether `fits` names a file and not a published table. */
export function namesFile(table: string): boolean {
  return /\.[a-z0-9]{1,5}$|[/\\]/i.test(table.trim())
}

/** The path without `./`; null when it leads out of the draft's folder or is no `.csv`. */
export function pathInside(table: string): string | null {
  const path = table.trim().replace(/^(?:\.\/)+/, '')
  const leaves = path.startsWith('/') || /[\\:]/.test(path) || path.split('/').some((part) => part === '..')
  return leaves || !/[^/.][^/]*\.csv$/i.test(path) ? null : path
}
