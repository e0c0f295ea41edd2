import { toHtml } from 'hast-util-to-html'
import { toHast } from 'mdast-util-to-hast'
import { toMdast } from '../../src/html/index.ts'
import type { Block, Inline } from '../../src/pattern/node.ts'

export const sizes = ['Child', 'Adult S', 'Adult L']

/** What a browser is given for these blocks, without the line ends between elements. */
export function htmlOf(...blocks: Block[]): string {
  return toHtml(toHast({ type: 'root', children: toMdast(blocks, sizes) })).replaceAll('\n', '')
}

export function htmlOfLine(...children: Inline[]): string {
  return htmlOf({ type: 'paragraph', children })
    .replace(/^<p>/, '')
    .replace(/<\/p>$/, '')
}

export function text(words: string): Inline {
  return { type: 'text', text: words }
}
