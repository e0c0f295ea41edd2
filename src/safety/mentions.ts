import type { Said } from './piece.ts'

/** Things that a piece may carry. */
export type Thing = 'cord' | 'smallPart' | 'fringe'

/** A thing that a draft says the piece carries. */
export interface Mention {
  readonly thing: Thing
  /** As a reader would name it: `buttons`. */
  readonly name: string
  readonly said: Said
  /** The sentence that it stands in. */
  readonly sentence: string
  readonly at: { readonly start: number; readonly end: number }
}

const tied = String.raw`(?:(?<=\b(?:a|the|each|every|one|both|first|second|left|right|two|2|chin|neck|waist|front|back)\s+(?:\w+\s+)?)ties?\b|\bties\b|(?<=^\W*)tie(?=\s*(?:$|[:(])))`

/** Each thing by the words for it; a stitch that is called after one is none. */
const words: readonly (readonly [thing: Thing, pattern: RegExp, name: string])[] = [
  ['cord', /\b(?:draw-?strings?|draw-?cords?|(?:i-?)?cords?|chin ?straps?)\b/gi, 'cords'],
  ['cord', new RegExp(tied, 'giu'), 'ties'],
  ['cord', /\bribbons?\b(?! (?:yarn|stitch|st\b))/gi, 'ribbons'],
  ['smallPart', /\bbuttons?\b(?! (?:stitch|st\b))/gi, 'buttons'],
  ['smallPart', /\bbeads?\b(?! (?:stitch|st\b))/gi, 'beads'],
  ['smallPart', /\b(?:safety|googly|plastic|toy|button) eyes?\b/gi, 'safety eyes'],
  ['smallPart', /\bpom-?\s?poms?\b/gi, 'pompoms'],
  ['smallPart', /\btoggles?\b/gi, 'toggles'],
  ['smallPart', /\b(?:snaps|snap fasteners?|press studs?|poppers)\b/gi, 'snaps'],
  ['smallPart', /\b(?:sequins?|(?:jingle |small )bells?)\b/gi, 'small trimmings'],
  ['fringe', /\bfring(?:e|es|ing)\b/gi, 'fringe'],
  ['fringe', /\btassels?\b/gi, 'tassels'],
]

/** `no pompom, cord or button`, `leave out the cord`: said not to be there. */
const denied =
  /\b(?:no|not|n['’]t|never|without|neither|nor|instead of|rather than|leave (?:out|off)|omit)\b(?:[\s,]+[\p{L}\d'’-]+){0,4}[\s,]*$/iu

/** As far before a thing as a denial is looked for. */
const reach = 80

/** What a maker does with a thing. Without it prose only speaks of the thing: “cords catch”. */
const done =
  /\b(?:with|has|have|work|make|made|ch|chain|join|attach|sew|sewn|place|placing|add|thread|threaded|weave|run|lace|pull|draw|insert|knot|tie|tied|fasten|close|closes|closed|cut|braid|twist|trim|finish|finished|use|buttons? up|on top|ends? in|each end)\b/i

/** Everything that the words of a draft say the piece carries, in their order. */
export function mentionsIn(said: readonly Said[]): readonly Mention[] {
  return said.flatMap((each) => (each.where === 'title' ? [] : sentencesOf(each).flatMap(mentionsInSentence)))
}

interface Sentence {
  readonly said: Said
  readonly text: string
  readonly start: number
}

/** Sentences of a passage; a clause after a semicolon is one, for it may say the contrary. */
function sentencesOf(said: Said): readonly Sentence[] {
  return [...said.text.matchAll(/[^.;!?]+(?:[.;!?](?!\s)[^.;!?]*)*/g)].map(({ 0: text, index }) => ({
    said,
    text,
    start: said.at.start + index,
  }))
}

function mentionsInSentence(sentence: Sentence): Mention[] {
  const found = words.flatMap(([thing, pattern, name]) =>
    [...sentence.text.matchAll(pattern)].map((match) => ({ thing, name, text: match[0], index: match.index })),
  )
  const speaksOnly = sentence.said.where === 'text' && !done.test(sentence.text)
  return found.flatMap(({ thing, name, text, index }) =>
    speaksOnly || isDenied(thing, found, sentence)
      ? []
      : [
          {
            thing,
            name,
            said: sentence.said,
            sentence: sentence.text,
            at: { start: sentence.start + index, end: sentence.start + index + text.length },
          },
        ],
  )
}

/** Whether prose says of such a thing that it is not there; the rest of the sentence then says why. */
function isDenied(
  thing: Thing,
  found: readonly { readonly thing: Thing; readonly index: number }[],
  { said, text }: Sentence,
): boolean {
  return (
    said.where === 'text' &&
    found.some(
      (other) => other.thing === thing && denied.test(text.slice(Math.max(0, other.index - reach), other.index)),
    )
  )
}
