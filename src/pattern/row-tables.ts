import type { Table, TableCell } from 'mdast'
import type { Span } from '../diagnostic/index.ts'

/** What the columns of a table of rows hold. */
type Column = 'label' | 'steps' | 'count' | 'none'

const labelHead = /^(?:row|rnd|round|rd|r|#|no|nr|number|step)s?\.?(?:\s*(?:no|number|#|nr)\.?)?$/i
const countHead =
  /^(?:#|no\.? of\s*)?(?:total\s*)?(?:st|sts|stitch|stitches|count|stitch count|total|totals|sc|sts total)s?(?:\s*(?:count|total))?$/i
const idleHead = /^(?:colou?rs?|yarns?|notes?|hooks?|done|check|✓|✔|side|photo|picture|time|tips?|comments?)$/i

const label = /^\W*(?:(?:rows?|rnds?|rounds?|rds?|r)\.?\s*)?\d+(?:\s*(?:[-–&,+]|to|and)\s*(?:r\s*)?\d+)*\W*$/i
const labelWord = /^\W*(?:rows?|rnds?|rounds?|rds?|foundation|set-?up|r(?=\s*\d))\b/i
const count =
  /^\W*(?:\d+(?:[\s,/()[\]–-]*\d+)*[)\]]?\s*(?:sts?|stitches|sc|hdc|dc|tr|htr|dtr)?(?:,\s*\d+\s*[\w -]+)*|\{\{[^}]*\}\}(?:\s*\w+)?)\W*$/i

/** What a table says, cell by cell. */
interface Cells {
  readonly head: readonly string[]
  readonly body: readonly (readonly string[])[]
}

function most(found: readonly string[], pattern: RegExp): boolean {
  const filled = found.filter((text) => text !== '')
  return filled.length > 0 && filled.filter((text) => pattern.test(text)).length * 5 >= filled.length * 3
}

function isLabels(head: string, own: readonly string[], column: number): boolean {
  if (most(own, labelWord)) return true
  return (
    (labelHead.test(head) && most(own, /\d/)) || (column === 0 && (head === '' || label.test(head)) && most(own, label))
  )
}

/** What each column holds; null where the table holds no rows. */
function columnsOf({ head, body }: Cells): readonly Column[] | null {
  const columnOf = (column: number): readonly string[] => body.map((row) => row[column] ?? '')
  const labels = head.findIndex((text, column) => isLabels(text, columnOf(column), column))
  if (labels < 0 || head.length < 2) return null
  const last = head.length - 1
  return head.map((text, column): Column => {
    if (column === labels) return 'label'
    const counts = countHead.test(text) || (column === last && column > labels + 1)
    if (counts && most(columnOf(column), count)) return 'count'
    return idleHead.test(text) && head.length > 2 ? 'none' : 'steps'
  })
}

/** Where a cell stands within its row's text. */
interface Place {
  readonly start: number
  readonly end: number
  readonly column: Column
}

const blank = (text: string): string => text.replace(/[^\n]/g, ' ')

/**
 * A row of a table as the row reader takes it: the same characters, but bars and what says nothing about the row are
 * blanks, a colon stands after the label, and brackets around the count.
 *
 *     | 7 | inc x 6 | 12 |
 *       7 : inc x 6 ( 12 )
 */
function rewritten(text: string, places: readonly Place[]): string {
  const marks = [...blank(text)]
  for (const { start, end, column } of places) {
    if (column === 'none') continue
    for (let at = start; at < end; at += 1) marks[at] = text[at] ?? ' '
    const own = text.slice(start, end)
    const after = text.indexOf('|', end)
    const before = text.lastIndexOf('|', start - 1)
    if (column === 'label' && after >= 0 && !/[:.]$/.test(own)) marks[after] = ':'
    if (column === 'steps' && after >= 0 && !/[.,;]$/.test(own) && own !== '') marks[after] = '.'
    if (column === 'count' && own !== '' && !/^[([{=]/.test(own) && after >= 0 && before >= 0) {
      marks[before] = '('
      marks[after] = ')'
    }
  }
  return marks.join('')
}

/** A row of a table in words. */
export interface TableRowText {
  readonly row: Table['children'][number]
  readonly at: Span
  readonly asRead: string
}

/**
 * The rows of a table whose columns are numbers of rows, steps and counts, ready to be read; null for any other table.
 *
 * @param textOf the draft's text in a span
 * @param spanOf where a row stands, or the contents of a cell
 */
export function rowsOfTable(
  table: Table,
  textOf: (at: Span) => string,
  spanOf: (node: Table['children'][number] | TableCell) => Span,
): readonly TableRowText[] | null {
  const [head, ...body] = table.children.map((row) => row.children.map((cell) => textOf(spanOf(cell)).trim()))
  const columns = head === undefined ? null : columnsOf({ head, body })
  if (head === undefined || columns === null) return null
  // A table without heads has its first row there.
  const first = label.test(head[columns.indexOf('label')] ?? '') ? 0 : 1
  return table.children.slice(first).map((row) => {
    const at = spanOf(row)
    const places = row.children.map((cell, column): Place => {
      const own = spanOf(cell)
      return { start: own.start - at.start, end: own.end - at.start, column: columns[column] ?? 'none' }
    })
    return { row, at, asRead: rewritten(textOf(at), places) }
  })
}
