import type { ElementContent, Properties } from 'hast'
import type { BlockContent, Data, PhrasingContent } from 'mdast'
import type { Node } from 'unist'

/**
 * Elements that Markdown has no node for: a row, a value, words for some sizes. The name and the
 * properties travel in `data`, where the host's step from Markdown to HTML looks for them.
 */
interface ElementData extends Data {
  hName: string
  hProperties: Properties
}

export interface BlockElement extends Node {
  type: 'blockElement'
  data: ElementData
  children: (BlockContent | PhrasingContent)[]
}

export interface PhrasingElement extends Node {
  type: 'phrasingElement'
  data: ElementData
  children: PhrasingContent[]
}

declare module 'mdast' {
  interface BlockContentMap {
    blockElement: BlockElement
  }
  interface PhrasingContentMap {
    phrasingElement: PhrasingElement
  }
  interface RootContentMap {
    blockElement: BlockElement
    phrasingElement: PhrasingElement
  }
  interface Data {
    hName?: string | undefined
    hProperties?: Properties | undefined
  }
}

export function blockElement(
  name: string,
  properties: Properties,
  children: (BlockContent | PhrasingContent)[],
): BlockElement {
  return { type: 'blockElement', data: { hName: name, hProperties: properties }, children }
}

export function phrasingElement(name: string, properties: Properties, children: PhrasingContent[]): PhrasingElement {
  return { type: 'phrasingElement', data: { hName: name, hProperties: properties }, children }
}

/** Elements as nodes among Markdown's own. */
export function phrasingOf(elements: readonly ElementContent[]): PhrasingContent[] {
  return elements.flatMap((element): PhrasingContent[] => {
    if (element.type === 'text') return [{ type: 'text', value: element.value }]
    if (element.type !== 'element') return []
    if (element.tagName === 'br') return [{ type: 'break' }]
    return [phrasingElement(element.tagName, element.properties, phrasingOf(element.children))]
  })
}
