import { dirname, resolve } from 'node:path'
import type { Element, Nodes, Root } from 'hast'
import type { VFile } from 'vfile'
import { pictureAt } from './read-beside.ts'

/**
 * Hands the pictures that lie beside the draft to Astro's image pipeline: it looks for `__ASTRO_IMAGE_` with the
 * source, the other attributes, and the how-manieth use of that source it is, and for the list of sources in
 * `file.data.astro.localImagePaths`.
 */
export function rehypeFitImages() {
  return (tree: Root, file: VFile): void => {
    const uses = new Map<string, number>()
    fitBelow(tree, uses, dirname(file.path ?? '.'))
    file.data.astro = { ...file.data.astro, localImagePaths: [...uses.keys()] }
  }
}

function fitBelow(node: Nodes, uses: Map<string, number>, folder: string): void {
  if (node.type === 'element' && node.tagName === 'img') fitImage(node, uses, folder)
  else if ('children' in node) for (const child of node.children) fitBelow(child, uses, folder)
}

/** One that isn't there keeps its words: the pipeline would stop every page over it, and its draft has been told. */
function fitImage(image: Element, uses: Map<string, number>, folder: string): void {
  const { src: written } = image.properties
  if (typeof written !== 'string' || URL.canParse(written) || /^[/#]/.test(written)) return
  const src = decoded(written)
  if (pictureAt(resolve(folder, src)) !== 'picture') return
  const index = uses.get(src) ?? 0
  uses.set(src, index + 1)
  image.properties = { __ASTRO_IMAGE_: JSON.stringify({ ...image.properties, src, index }) }
}

/** A path as the file system knows it; one with a stray percent sign stays as it is. */
function decoded(path: string): string {
  try {
    return decodeURI(path)
  } catch {
    return path
  }
}
