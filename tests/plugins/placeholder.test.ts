import type { Nodes } from 'mdast'
import remarkParse from 'remark-parse'
import remarkSmartypants from 'remark-smartypants'
import remarkStringify from 'remark-stringify'
import { unified } from 'unified'
import { describe, expect, it } from 'vitest'
import { parseMarkdown } from '../../plugins/markdown.ts'
import { addDraftSyntax } from '../../plugins/syntax.ts'

function* nodes(node: Nodes): Generator<Nodes> {
  yield node
  if ('children' in node) for (const child of node.children) yield* nodes(child)
}

/** The placeholders of a text, each as [formula, the characters it covers]. */
function placeholders(text: string): [string, string][] {
  return [...nodes(parseMarkdown(text))].flatMap((node): [string, string][] =>
    node.type === 'placeholder'
      ? [[node.value, text.slice(node.position?.start.offset, node.position?.end.offset)]]
      : [],
  )
}

describe('a placeholder comes through Markdown whole', () => {
  it.each([
    ['plain text', 'Ch {{sts}}, join.', [['sts', '{{sts}}']]],
    ['asterisks in the formula', '{{a*b*c}}', [['a*b*c', '{{a*b*c}}']]],
    ['underscores', '{{rim_sts_made}}', [['rim_sts_made', '{{rim_sts_made}}']]],
    ['emphasis around it', '*about {{x}} of them*', [['x', '{{x}}']]],
    ['strong around it', '**{{x}}**', [['x', '{{x}}']]],
    ['a heading', '## Rounds {{n}}', [['n', '{{n}}']]],
    ['a link’s text', '[{{ [1, 2] }}](https://a.example)', [[' [1, 2] ', '{{ [1, 2] }}']]],
    ['a table cell', '| a |\n| - |\n| {{total("Rnd 4")}} |', [['total("Rnd 4")', '{{total("Rnd 4")}}']]],
    ['a list item', '- {{x}}', [['x', '{{x}}']]],
    ['braces in the formula', '{{ {Child: 1, Adult: 2} }}', [[' {Child: 1, Adult: 2} ', '{{ {Child: 1, Adult: 2} }}']]],
    ['a closing brace against the end', '{{ {A: 1}}}', [[' {A: 1}', '{{ {A: 1}}}']]],
    ['braces in quotes', '{{ "}}" }}', [[' "}}" ', '{{ "}}" }}']]],
    [
      'two on a line',
      '{{a}} and {{b}}',
      [
        ['a', '{{a}}'],
        ['b', '{{b}}'],
      ],
    ],
    ['a line break inside', '{{a +\nb}}', [['a +\nb', '{{a +\nb}}']]],
    ['text that follows at once', '{{n}}th', [['n', '{{n}}']]],
  ])('%s', (_, text, expected) => {
    expect(placeholders(text)).toEqual(expected)
  })

  it.each([
    ['code span', '`{{x}}`'],
    ['code block', '```\n{{x}}\n```'],
    ['grading block', '```grading\nx = 1 # {{x}}\n```'],
    ['escaped', '\\{{x}}'],
    ['never closed', 'Ch {{x, join.'],
    ['one brace', '{x}'],
    ['closed in the next paragraph', '{{x\n\ny}}'],
  ])('%s holds none', (_, text) => {
    expect(placeholders(text)).toEqual([])
  })

  it('prints an escaped pair of braces', () => {
    const text = [...nodes(parseMarkdown('\\{{x}}'))].find((node) => node.type === 'text')
    expect(text).toMatchObject({ value: '{{x}}' })
  })

  it('is left alone by smart punctuation', () => {
    const processor = unified()
      .use(remarkParse)
      .use(remarkSmartypants)
      .use(function syntax() {
        addDraftSyntax(this.data())
      })
    const tree = processor.parse('It\'s {{total("Rnd 4")}} -- "so"')
    processor.runSync(tree)
    expect([...nodes(tree)].map((node) => ('value' in node ? node.value : node.type))).toEqual([
      'root',
      'paragraph',
      'It’s ',
      'total("Rnd 4")',
      ' — “so”',
    ])
  })

  it('is written back as it was typed', () => {
    const processor = unified()
      .use(remarkParse)
      .use(remarkStringify)
      .use(function syntax() {
        addDraftSyntax(this.data())
      })
    const text = 'Ch {{a*b}}, \\{{not}}.\n'
    expect(processor.stringify(processor.parse(text))).toBe(text)
  })

  it('does not slow down on many that are never closed', () => {
    expect(placeholders('{{ '.repeat(5_000))).toEqual([])
  })
})
