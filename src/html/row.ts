import type { PhrasingContent } from 'mdast'
import type { Inline, RowBlock } from '../pattern/node.ts'
import type { Moment } from '../pattern/pattern.ts'
import type { Context } from './context.ts'
import { type BlockElement, blockElement, phrasingElement } from './element.ts'
import { onlyClass } from './sizes.ts'

/** A row as an item of the list of rows; its anchor is the row's own id. */
export function row(node: RowBlock, context: Context): BlockElement {
  const parts = [
    part('row-label', node.label, context),
    part('row-steps', node.steps, context),
    part('row-stated', node.stated, context),
    node.moment === null ? [] : [filmLink(node.moment)],
  ]
  const properties = { className: ['row', ...onlyClass(node.only)], id: node.id }
  return blockElement('li', properties, spaced(parts.flat()))
}

/** The designer's film from the moment on that shows the row. It stands elsewhere, and nothing of it is loaded here. */
function filmLink({ href, time, place }: Moment): PhrasingContent {
  const properties = { className: ['row-film'], href, rel: ['noopener'], ariaLabel: `Film, ${time}: ${place}` }
  return phrasingElement('a', properties, [{ type: 'text', value: `Film, ${time}` }])
}

/**
 * Rows that follow each other, as one list. Its numbers are hidden, since rows carry their own labels;
 * a list without numbers keeps being announced as a list only when its role is said.
 */
export function rowList(rows: readonly RowBlock[], context: Context): BlockElement {
  return blockElement(
    'ol',
    { className: ['rows'], role: 'list' },
    rows.map((each) => row(each, context)),
  )
}

function part(className: string, inlines: readonly Inline[], context: Context): PhrasingContent[] {
  return inlines.length === 0 ? [] : [phrasingElement('span', { className: [className] }, context.inlines(inlines))]
}

/** Spaces between the parts: for copied text, and for readers who hear the page. */
function spaced(parts: readonly PhrasingContent[]): PhrasingContent[] {
  return parts.flatMap((each, index): PhrasingContent[] =>
    index === 0 ? [each] : [{ type: 'text', value: ' ' }, each],
  )
}
