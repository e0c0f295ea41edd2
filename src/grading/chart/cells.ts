/** A cell of a table in a text file, trimmed, and where it starts; lines and columns count from 1. */
export interface Cell {
  readonly text: string
  readonly line: number
  readonly column: number
}

export interface CellRows {
  /** Blank lines and comments left out; each row has one cell or more. */
  readonly rows: readonly (readonly Cell[])[]
  /** What stands between the cells. */
  readonly separator: Separator
  /** The first cell whose quote is never closed. */
  readonly open: Cell | null
}

export type Separator = ',' | ';' | '\t'

/**
 * Cuts comma-separated text into cells (RFC 4180, without line breaks in a cell). A spreadsheet may have put semicolons
 * or tabs between them: the first row tells. A line that starts with `#` is a comment.
 */
export function readCells(text: string): CellRows {
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .map((words, index) => ({ words, line: index + 1 }))
    .filter(({ words }) => words.trim() !== '' && !words.trimStart().startsWith('#'))
  const separator = separatorOf(lines[0]?.words ?? '')
  const read = lines.map(({ words, line }) => cellsOf(words, line, separator))
  const rows = read.map(({ cells }) => cells).filter((cells) => cells.some((cell) => cell.text !== ''))
  return { rows, separator, open: read.find(({ open }) => open !== null)?.open ?? null }
}

function separatorOf(header: string): Separator {
  const bare = header.replace(/"[^"]*"/g, '')
  if (bare.includes(';')) return ';'
  return bare.includes('\t') ? '\t' : ','
}

function cellsOf(words: string, line: number, separator: Separator): { cells: Cell[]; open: Cell | null } {
  const cells: Cell[] = []
  let open: Cell | null = null
  for (let from = 0; from <= words.length; ) {
    const quoted = /^[^\S\t]*"/.test(words.slice(from)) ? quotedEnd(words, from) : null
    const next = words.indexOf(separator, quoted?.end ?? from)
    const end = next === -1 ? words.length : next
    const cell = cellAt(words, from, end, line)
    if (quoted !== null && !quoted.closed) open ??= cell
    cells.push(cell)
    from = end + 1
  }
  return { cells, open }
}

/** Where a cell's quotes end; `""` within them stands for one quote. */
function quotedEnd(words: string, from: number): { readonly end: number; readonly closed: boolean } {
  let at = words.indexOf('"', from) + 1
  for (; at < words.length; at += 1) {
    if (words[at] !== '"') continue
    if (words[at + 1] !== '"') return { end: at + 1, closed: true }
    at += 1
  }
  return { end: words.length, closed: false }
}

function cellAt(words: string, from: number, end: number, line: number): Cell {
  const raw = words.slice(from, end)
  const text = raw.trim()
  const column = from + raw.length - raw.trimStart().length + 1
  const bare = /^"(.*)"$/.exec(text)?.[1]
  return { text: bare === undefined ? text : bare.replaceAll('""', '"').trim(), line, column }
}
