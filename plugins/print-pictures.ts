import { readFileSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import sharp from 'sharp'
import type { Block, Inline } from '../src/pattern/node.ts'
import type { Pattern } from '../src/pattern/pattern.ts'
import type { Form } from '../src/print/index.ts'
import { pictureAt } from './read-beside.ts'

interface Room {
  readonly width: number
  readonly height: number
}

/** Pixels that a cover has room for at 220 to the inch, beside the title and below it. */
const coverRooms: Readonly<Record<Form, Room>> = {
  usual: { width: 520, height: 690 },
  large: { width: 1520, height: 980 },
  counts: { width: 0, height: 0 },
}
const bodyRoom: Room = { width: 1200, height: 920 }

/**
 * The pictures of a pattern as its print-out takes them, by the `src` that the draft gives them: no larger than they are
 * printed, whatever kind of file they were. `draft` is the draft's path.
 */
export async function printPictures(
  pattern: Pattern,
  draft: string,
  form: Form,
): Promise<Readonly<Record<string, Uint8Array>>> {
  if (form === 'counts') return {}
  const wanted = new Map<string, Room>(picturesIn(pattern.body).map((src) => [src, bodyRoom]))
  if (pattern.cover !== null) wanted.set(pattern.cover.src, coverRooms[form])
  const made = await Promise.all(
    [...wanted].map(async ([src, room]) => [src, await picture(resolve(dirname(draft), src), room)] as const),
  )
  return Object.fromEntries(made.flatMap(([src, bytes]) => (bytes === null ? [] : [[src, bytes]])))
}

const known = new Map<string, Promise<Uint8Array | null>>()

/** Both papers show the same picture. What can't be read is left out; its words are printed. */
function picture(path: string, room: Room): Promise<Uint8Array | null> {
  if (pictureAt(path) !== 'picture') return Promise.resolve(null)
  const file = readFileSync(path)
  const key = `${path} ${room.width} ${file.length}`
  const before = known.get(key) ?? fitted(file, room).catch(() => null)
  known.set(key, before)
  return before
}

/** Whatever it was, as the kind of file that is smaller for it: a photograph as JPEG, a plain drawing as PNG. */
async function fitted(file: Uint8Array, room: Room): Promise<Uint8Array> {
  const image = sharp(file)
  const { format } = await image.metadata()
  const small = image
    .rotate()
    .flatten({ background: '#ffffff' })
    .resize({ ...room, fit: 'inside', withoutEnlargement: format !== 'svg' })
  const jpeg = await small.clone().jpeg({ quality: 80, mozjpeg: true }).toBuffer()
  if (format === 'jpeg') return jpeg
  const png = await small.png({ palette: true, colours: 128, effort: 10, compressionLevel: 9 }).toBuffer()
  return png.length < jpeg.length ? png : jpeg
}

function picturesIn(blocks: readonly Block[]): readonly string[] {
  return blocks.flatMap((block): readonly string[] => {
    if (block.type === 'list') return block.items.flatMap(picturesIn)
    if (block.type === 'only' || block.type === 'quote') return picturesIn(block.children)
    return block.type === 'paragraph' ? block.children.flatMap(pictureSources) : []
  })
}

function pictureSources(node: Inline): readonly string[] {
  if (node.type === 'image') return /^[a-z][a-z\d+.-]*:/i.test(node.src) ? [] : [node.src]
  return 'children' in node ? node.children.flatMap(pictureSources) : []
}
