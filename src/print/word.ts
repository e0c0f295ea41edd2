import type { Face, FaceName, Faces } from './face.ts'

/** A stretch of a word that one face sets. Widths and heights are parts of the type size. */
export interface Stretch {
  readonly text: string
  readonly face: Face
  readonly width: number
  /** Size beside the text around it: 1, or less in a fraction. */
  readonly scale: number
  /** How far above the baseline it stands. */
  readonly rise: number
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
  const stretches = pieces.flatMap(({ text, scale, rise, tuck }) =>
    cutByFace(faces, name, text, missing).map((cut) => {
      const width = advance(cut.face, cut.text, tabular) * scale
      return { ...cut, scale, rise, width: tuck ? width - slashTuck(faces, name) : width }
    }),
  )
  return { stretches, width: stretches.reduce((sum, { width }) => sum + width, 0), missing }
}

/** Width of a text set in one face, as a part of the type size. */
function advance(face: Face, text: string, tabular: boolean): number {
  return face.font.layout(text, tabular ? ['tnum'] : undefined).advanceWidth / face.font.unitsPerEm
}

/** Numerator and denominator of fractions that text faces seldom have as one letter. */
const fractions: Readonly<Record<string, readonly [string, string]>> = {
  '⅓': ['1', '3'],
  '⅔': ['2', '3'],
  '⅛': ['1', '8'],
  '⅜': ['3', '8'],
  '⅝': ['5', '8'],
  '⅞': ['7', '8'],
}

interface Piece {
  readonly text: string
  readonly scale: number
  readonly rise: number
  /** The next piece moves in under or over this one. */
  readonly tuck: boolean
}

const plain = (text: string): Piece => ({ text, scale: 1, rise: 0, tuck: false })
const numerator = { scale: 0.6, rise: 0.28, tuck: true }
const slash = { ...plain('\u2044'), tuck: true }
const denominator = { scale: 0.6, rise: 0, tuck: false }

/** How far the figures of a fraction move in, where the face gives its slash the room of a letter. */
function slashTuck(faces: Faces, name: FaceName): number {
  const face = faces.faceFor(name, 0x2044)
  return face === null ? 0 : Math.max(0, (advance(face, slash.text, false) - 0.26) / 2)
}

/**
 * Builds fractions that no face has from small figures and a fraction slash. After a whole number stands
 * a thin space, lest `9⅛` be read aloud or copied as `91⁄8`.
 */
function splitFractions(text: string, covered: (character: string) => boolean): readonly Piece[] {
  const pieces: Piece[] = []
  for (const part of text.split(/([⅓⅔⅛⅜⅝⅞])/)) {
    const fraction = fractions[part]
    if (part === '') continue
    if (fraction === undefined || covered(part)) {
      pieces.push(plain(part))
      continue
    }
    const afterNumber = /\d$/.test(pieces.at(-1)?.text ?? '')
    pieces.push({ text: `${afterNumber ? '\u2009' : ''}${fraction[0]}`, ...numerator })
    pieces.push(slash, { text: fraction[1], ...denominator })
  }
  return pieces
}

/** Plain writing for signs that no face has. */
const substitutes: Readonly<Record<string, string>> = {
  '\u2010': '-',
  '\u2011': '-',
  '→': '->',
  '←': '<-',
  '↔': '<->',
  '⇒': '=>',
  '≥': '>=',
  '≤': '<=',
  '≈': '~',
  '≠': '!=',
  '\u202f': '\u00a0',
  '\u2007': '\u00a0',
}

/** Joiners, variation selectors and control characters: seen only in their effect on others. */
const invisible = /\p{Cc}|\p{Cf}|\p{Zl}|\p{Zp}|\p{Variation_Selector}/gu

function covers(faces: Faces, name: FaceName, character: string): boolean {
  return faces.faceFor(name, character.codePointAt(0) ?? 0) !== null
}

function cutByFace(faces: Faces, name: FaceName, text: string, missing: string[]): { text: string; face: Face }[] {
  const cuts: { text: string; face: Face }[] = []
  for (const wanted of text.replace(/\t/g, '\u00a0').replace(invisible, '')) {
    for (const character of covers(faces, name, wanted) ? wanted : (substitutes[wanted] ?? wanted)) {
      const found = faces.faceFor(name, character.codePointAt(0) ?? 0)
      if (found === null) missing.push(character)
      const next = { text: found === null ? '?' : character, face: found ?? faces.main(name) }
      const last = cuts.at(-1)
      if (last !== undefined && last.face === next.face) last.text += next.text
      else cuts.push(next)
    }
  }
  return cuts
}
