import type { Face, FaceName, Faces } from './face.ts'
import { splitFractions } from './fraction.ts'
import { shownAs } from './substitute.ts'

/** A stretch of a word that one face sets. Widths and heights are parts of the type size. */
export interface Stretch {
  readonly text: string
  readonly face: Face
  readonly width: number
  /** Size beside the text around it: 1, or less in a fraction. */
  readonly scale: number
  /** How far above the baseline it stands. */
  readonly rise: number
  /** The fraction that begins here, as it is read and copied; '' where it goes on, null outside of one. */
  readonly reads: string | null
}

/** A word with its faces chosen and its width known. */
export interface SetWord {
  readonly stretches: readonly Stretch[]
  readonly width: number
  /** Characters that no face has. */
  readonly missing: readonly string[]
}

interface Measured {
  readonly words: Map<string, SetWord>
}

const measured = new WeakMap<Faces, Measured>()
const mostWords = 30_000

/** Chooses the faces of a word and measures it; a word met before costs one look. */
export function setWord(faces: Faces, name: FaceName, tabular: boolean, text: string): SetWord {
  const { words } = measuredWith(faces)
  const key = `${name}${tabular ? '#' : ' '}${text}`
  const before = words.get(key)
  if (before !== undefined) return before
  if (words.size >= mostWords) words.clear()
  const word = compose(faces, name, tabular, text)
  words.set(key, word)
  return word
}

function measuredWith(faces: Faces): Measured {
  const known = measured.get(faces) ?? { words: new Map() }
  measured.set(faces, known)
  return known
}

function compose(faces: Faces, name: FaceName, tabular: boolean, text: string): SetWord {
  const missing: string[] = []
  const pieces = splitFractions(text.normalize('NFC'), (character) => covers(faces, name, character))
  const stretches = pieces.flatMap(({ text, scale, rise, tuck, reads }) =>
    cutByFace(faces, name, text, missing).map((cut, index) => {
      const width = advance(cut.face, cut.text, tabular) * scale
      const read = reads === null || index === 0 ? reads : ''
      return { ...cut, scale, rise, reads: read, width: tuck ? width - slashTuck(faces, name) : width }
    }),
  )
  return { stretches, width: stretches.reduce((sum, { width }) => sum + width, 0), missing }
}

/** Width of a text set in one face, as a part of the type size. */
function advance(face: Face, text: string, tabular: boolean): number {
  return face.font.layout(text, tabular ? ['tnum'] : undefined).advanceWidth / face.font.unitsPerEm
}

/** How far the figures of a fraction move in, where the face gives its slash the room of a letter. */
function slashTuck(faces: Faces, name: FaceName): number {
  const face = faces.faceFor(name, 0x2044)
  return face === null ? 0 : Math.max(0, (advance(face, '\u2044', false) - 0.26) / 2)
}

function covers(faces: Faces, name: FaceName, character: string): boolean {
  return faces.faceFor(name, character.codePointAt(0) ?? 0) !== null
}

function cutByFace(faces: Faces, name: FaceName, text: string, missing: string[]): { text: string; face: Face }[] {
  const cuts: { text: string; face: Face }[] = []
  for (const wanted of text) {
    const shown = shownAs(wanted, (character) => covers(faces, name, character))
    if (shown === null) missing.push(wanted)
    for (const character of shown ?? '?') {
      const face = faces.faceFor(name, character.codePointAt(0) ?? 0) ?? faces.main(name)
      const last = cuts.at(-1)
      if (last !== undefined && last.face === face) last.text += character
      else cuts.push({ text: character, face })
    }
  }
  return cuts
}
