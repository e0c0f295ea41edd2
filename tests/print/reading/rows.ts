import type { FoundPage, TextNode } from '../read-pdf.ts'

/** A row as a print-out says it: its label, its steps, and the lines of its table, the first cell what the others are. */
export interface PrintedRow {
  readonly label: string
  readonly steps: string
  readonly lines: readonly (readonly string[])[]
  /** Names at the head of the table; none where the row has none. */
  readonly sizes: readonly string[]
}

/** The rows of a print-out in their order: items of lists whose labels end in a colon. */
export function printedRows(pages: readonly FoundPage[]): readonly PrintedRow[] {
  return pages
    .flatMap(({ tree }) => itemsIn(tree))
    .flatMap((item): readonly PrintedRow[] => {
      const label = item.children.find(({ role }) => role === 'Lbl')?.text.trim() ?? ''
      const body = item.children.find(({ role }) => role === 'LBody')
      if (!label.endsWith(':') || body === undefined) return []
      const table = body.children.find(({ role }) => role === 'Table')
      const lines = (table?.children ?? []).map((row) => row.children.map(({ text }) => text.trim()))
      const [header = [], ...others] = lines
      return [{ label, steps: body.text.replace(table?.text ?? '', ''), lines: others, sizes: header.slice(1) }]
    })
}

function itemsIn(node: TextNode): readonly TextNode[] {
  return node.role === 'LI' ? [node] : node.children.flatMap(itemsIn)
}

/** What a reader of one size makes of it: the numbers of their column in the place of letters. */
export function rowForSize({ label, steps, lines, sizes }: PrintedRow, size: number): string {
  let words = wordsForSize(steps, sizes, size)
  const others: string[] = []
  for (const [head = '', ...cells] of lines) {
    const number = cells[size] ?? ''
    if (/^[A-Z]{1,2}$/.test(head)) words = words.replace(new RegExp(`(?<![A-Za-z])${head}(?![A-Za-z])`, 'g'), number)
    else others.push(`${number} ${head}`)
  }
  return `${label} ${words} ${others.join(' ')}`
}

/** Sizes whose words differ have a line each: `Size Small: …; Size Large: ….` */
function wordsForSize(steps: string, sizes: readonly string[], size: number): string {
  return sizes.reduce(
    (words, name, other) => words.replace(new RegExp(`Size ${name}: ${other === size ? '' : '.*?(;|$)'}`, 's'), ''),
    steps,
  )
}
