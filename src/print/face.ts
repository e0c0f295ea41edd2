import type { Font } from 'fontkit'
import * as fontkit from 'fontkit'

export type FaceName = 'text' | 'textBold' | 'textItalic' | 'textBoldItalic' | 'title'

/** The bytes of a TrueType font, or how to come by them when a letter is first looked for in it. */
export type FontFile = Uint8Array | (() => Uint8Array)

/**
 * Font files by the part they play. The first of a list is the face itself, the others are asked in their order
 * for letters that it lacks. Handing over the same object again saves all parsing and measuring done before.
 */
export type Fonts = Readonly<Record<FaceName, readonly FontFile[]>>

/** An opened font file. */
export interface Face {
  readonly font: Font
  readonly file: Uint8Array
}

/** The opened faces of one `Fonts`. */
export interface Faces {
  /** The face that has this character, the wanted one first; null when none has it. */
  readonly faceFor: (name: FaceName, codePoint: number) => Face | null
  readonly main: (name: FaceName) => Face
}

const opened = new WeakMap<Fonts, Faces>()

/** Opens fonts, each file once and only when a text asks for it. */
export function openFaces(fonts: Fonts): Faces {
  const known = opened.get(fonts)
  if (known !== undefined) return known
  const faces = createFaces(fonts)
  opened.set(fonts, faces)
  return faces
}

function createFaces(fonts: Fonts): Faces {
  const byFile = new Map<FontFile, Face>()
  const open = (file: FontFile): Face => {
    const face = byFile.get(file) ?? openFace(typeof file === 'function' ? file() : file)
    byFile.set(file, face)
    return face
  }
  const chosen = new Map<string, Face | null>()
  const choose = (name: FaceName, codePoint: number): Face | null => {
    for (const file of fonts[name]) {
      const face = open(file)
      if (face.font.hasGlyphForCodePoint(codePoint)) return face
    }
    return null
  }
  return {
    faceFor(name, codePoint) {
      const key = `${name} ${codePoint}`
      const before = chosen.get(key)
      if (before !== undefined) return before
      const face = choose(name, codePoint)
      chosen.set(key, face)
      return face
    },
    main(name) {
      const [file] = fonts[name]
      if (file === undefined) throw new Error(`no font file was given for ${name}`)
      return open(file)
    },
  }
}

function openFace(file: Uint8Array): Face {
  const font = fontkit.create(file)
  if (font.type !== 'TTF') throw new Error('a font file is not a single TrueType font')
  return { font, file }
}
