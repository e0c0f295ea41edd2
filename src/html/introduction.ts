import type { Block } from '../pattern/node.ts'
import { withNotice } from './notice.ts'

/**
 * A body's HTML in two parts, cut before its first heading: what introduces the pattern stands ahead of
 * the sections that the page makes from facts, and a place for a notice above the first row. Without a heading all of it is
 * instructions.
 */
export function cutIntroduction(html: string, body: readonly Block[]): { introduction: string; instructions: string } {
  const first = body.find((block) => block.type === 'heading')
  const heading = [...html.matchAll(/<h[1-6][^>]* id="([^"]*)"/g)].find(([, id]) => id === first?.id)
  const cut = heading?.index ?? 0
  return { introduction: html.slice(0, cut).trim(), instructions: withNotice(html.slice(cut)) }
}
