import { textForAll } from '../../src/measure/index.ts'
import type { Block, Inline } from '../../src/pattern/node.ts'
import type { Pattern } from '../../src/pattern/pattern.ts'

/** A pattern's text as a page shows it in the other country's terms, all sizes side by side, as a draft to be read. */
export function draftInOtherTerms({ title, sizes, terms, body }: Pattern, swatch: string): string {
  const other = terms === 'us' ? 'uk' : 'us'
  const names = JSON.stringify(sizes)
  const facts = `title: ${title}\nsizes: ${names}\nterms: ${other}\n${swatch}`
  return `---\n${facts}\n---\n\n${blocks(body, sizes)}`
}

function blocks(body: readonly Block[], sizes: readonly string[]): string {
  return body.map((block) => written(block, sizes)).join('\n\n')
}

function written(block: Block, sizes: readonly string[]): string {
  switch (block.type) {
    case 'heading':
      return `${'#'.repeat(block.depth)} ${line(block.children)}`
    case 'paragraph':
      return line(block.children)
    case 'list':
      return block.items.map((item) => `- ${blocks(item, sizes)}`).join('\n')
    case 'row':
      return [block.label, block.steps, block.stated].map(line).join(' ').trim()
    case 'only':
      return `:::sizes{only="${block.sizes.map((size) => sizes[size]).join(', ')}"}\n${blocks(block.children, sizes)}\n:::`
    case 'table':
      return table(block.head, block.rows)
    case 'quote':
      return blocks(block.children, sizes)
    default:
      return ''
  }
}

type Cells = readonly (readonly Inline[])[]

function table(head: Cells, rows: readonly Cells[]): string {
  const bar = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`
  return [bar(head.map(line)), bar(head.map(() => '---')), ...rows.map((cells) => bar(cells.map(line)))].join('\n')
}

function line(nodes: readonly Inline[]): string {
  return nodes.map(words).join('')
}

function words(node: Inline): string {
  switch (node.type) {
    case 'text':
    case 'code':
      return node.text
    case 'term':
      return node.term.other
    case 'value':
      return textForAll(node.segments.map((segment) => ({ ...segment, text: segment.term?.other ?? segment.text })))
    case 'strong':
      return `**${line(node.children)}**`
    case 'break':
      return '\n'
    case 'image':
      return node.alt
    default:
      return line(node.children)
  }
}
