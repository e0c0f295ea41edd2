import { readFileSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import { imageMetadata } from 'astro/assets/utils'
import type { Element, Nodes, Root } from 'hast'
import type { VFile } from 'vfile'
import { pictureAt } from './read-beside.ts'

/**
 * Hands the pictures that lie beside the draft to Astro's image pipeline: it looks for `__ASTRO_IMAGE_` with the
 * source, the other attributes, and the how-manieth use of that source it is, and for the list of sources in
 * `file.data.astro.localImagePaths`.
 */
export function rehypeFitImages() {
  return async (tree: Root, file: VFile): Promise<void> => {
    const uses = new Map<string, number>()
    for (const image of imagesIn(tree)) await fitImage(image, uses, dirname(file.path ?? '.'))
    file.data.astro = { ...file.data.astro, localImagePaths: [...uses.keys()] }
  }
}

function* imagesIn(node: Nodes): Generator<Element> {
  if (node.type === 'element' && node.tagName === 'img') yield node
  else if ('children' in node) for (const child of node.children) yield* imagesIn(child)
}

/** One that isn't there keeps its words: the pipeline would stop every page over it, and its draft has been told. */
async function fitImage(image: Element, uses: Map<string, number>, folder: string): Promise<void> {
  const { src: written } = image.properties
  if (typeof written !== 'string' || URL.canParse(written) || /^[/#]/.test(written)) return
  const src = decoded(written)
  const path = resolve(folder, src)
  if (pictureAt(path) !== 'picture') return
  const index = uses.get(src) ?? 0
  uses.set(src, index + 1)
  image.properties = { __ASTRO_IMAGE_: JSON.stringify({ ...image.properties, ...(await fitting(path)), src, index }) }
}

/** Widest that a picture is shown, for a sharp screen; and what smaller ones take. */
const widest = 1440
const narrower = [360, 720, 1080]

/** A photo in the widths that screens need, no wider than it is; a drawing as it is. Each is loaded when it comes near. */
async function fitting(path: string): Promise<Readonly<Record<string, unknown>>> {
  const lazy = { loading: 'lazy', decoding: 'async' }
  const { format, width } = await imageMetadata(readFileSync(path), path)
  if (format === 'svg') return lazy
  const most = Math.min(width, widest)
  const widths = [...narrower.filter((each) => each < most), most]
  return { ...lazy, width: most, widths, sizes: '(min-width: 48rem) 43rem, 92vw' }
}

/** A path as the file system knows it; one with a stray percent sign stays as it is. */
function decoded(path: string): string {
  try {
    return decodeURI(path)
  } catch {
    return path
  }
}
