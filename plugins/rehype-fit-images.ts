import type { Nodes, Root } from 'hast'
import type { VFile } from 'vfile'

/**
 * Marks the pictures that lie beside the draft so that Astro's image pipeline fits them: it looks for
 * `__ASTRO_IMAGE_` with the source, the other attributes, and the how-manieth use of that source it is.
 */
export function rehypeFitImages() {
  return (tree: Root, file: VFile): void => {
    const local = new Set(file.data.astro?.localImagePaths)
    if (local.size > 0) fitBelow(tree, local, new Map())
  }
}

function fitBelow(node: Nodes, local: ReadonlySet<string>, used: Map<string, number>): void {
  if (node.type === 'element' && node.tagName === 'img' && typeof node.properties.src === 'string') {
    const src = decodeURI(node.properties.src)
    if (!local.has(src)) return
    const index = used.get(src) ?? 0
    used.set(src, index + 1)
    node.properties = { __ASTRO_IMAGE_: JSON.stringify({ ...node.properties, src, index }) }
  }
  if ('children' in node) for (const child of node.children) fitBelow(child, local, used)
}
