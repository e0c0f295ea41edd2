import type { Vocabulary } from './reader.ts'
import type { Word } from './words.ts'

const working = /^(?:sk|skip|miss|inc|dec|increase|increasing|decrease|decreasing|each|every|unworked|tog|\*|\*\*)$/
const chainWord = /^(?:ch|chs|chain|chains)$/
const stitchWord = /^(?:sts?|stitch|stitches|sps?|spaces?|loops?|lps?)$/
const placeWord = /^(?:in|into|around|across|evenly|along|between|through)$/
/** What `repeat` may go back to: `repeat for the second sleeve` does not. */
const repeated =
  /^(?:from|rows?|rnds?|rounds?|last|these|this|previous|the|across|around|to|until|twice|once|more|between|bet|\*|\*\*|[([])$/

/** Verbs of making up: what follows them is no step, whatever it names. */
const makingUp =
  /^(?:place|insert|attach|sew|stuff|weave|embroider|mark|move|pin|glue|cut|tie|add|fold|flatten|block|press|seam|turn inside|set|remember|note|hide|trim|break|remove|put|wash|assemble|stitch|whip ?stitch|close|pull|carry|drop)$/

/** Sentences at depth 0, each with its full stop. */
export function sentencesOf(words: readonly Word[]): readonly (readonly Word[])[] {
  const found: Word[][] = [[]]
  let depth = 0
  for (const word of words) {
    found.at(-1)?.push(word)
    if (/^[([{]$/.test(word.text)) depth += 1
    if (/^[)\]}]$/.test(word.text)) depth = Math.max(0, depth - 1)
    if (word.text === '.' && depth === 0) found.push([])
  }
  return found.filter((sentence) => sentence.length > 0)
}

function isStitch({ text, kind }: Word, { dictionary, specials }: Vocabulary): boolean {
  return kind === 'word' && (dictionary.stitches.has(text) || specials.has(text) || /\dtog$/.test(text))
}

/** `3 sc`, `sc in`: a stitch by name, with its number or its place. */
function namesWork(sentence: readonly Word[], at: number, vocabulary: Vocabulary): boolean {
  const word = sentence[at]
  const next = sentence[at + 1]
  if (word === undefined) return false
  if (word.kind === 'number') return next !== undefined && isStitch(next, vocabulary)
  if (chainWord.test(word.text)) return next?.kind === 'number' || sentence[at - 1]?.kind === 'number'
  // `Sl st the ends together`, `seam with sc`: no place and no number.
  return isStitch(word, vocabulary) && (next?.kind === 'number' || placeWord.test(next?.text ?? ''))
}

/** `Repeat for the second sleeve` and `Repeat until it is long enough` go back to no stitches of the row. */
function repeatsSomething(sentence: readonly Word[], at: number): boolean {
  const next = sentence[at + 1]
  if (next?.text !== 'until' || at > 0) return next?.kind === 'number' || repeated.test(next?.text ?? '')
  return sentence.slice(at + 2).some(({ text, kind }) => kind === 'number' || /^(?:end|rem|remain|last)$/.test(text))
}

/** Whether a sentence may have something to be worked in it. */
export function mayWork(sentence: readonly Word[], vocabulary: Vocabulary): boolean {
  const making = makingUp.test(sentence[0]?.text ?? '')
  return sentence.some((word, at) => {
    if (word.kind === 'bySize' || word.kind === 'made' || word.kind === 'broken') return true
    if (namesWork(sentence, at, vocabulary)) return true
    if (making) return false
    if (working.test(word.text)) return true
    const next = sentence[at + 1]
    if (word.text === 'rep' || word.text === 'repeat') return repeatsSomething(sentence, at)
    if (word.text === 'leave') return next?.kind === 'number' || /^(?:rem|remaining|last|the)$/.test(next?.text ?? '')
    return word.kind === 'number' && stitchWord.test(next?.text ?? '')
  })
}

/** Whether words are talk: in no sentence anything that could be worked. */
export function isProse(words: readonly Word[], vocabulary: Vocabulary): boolean {
  return sentencesOf(words).every((sentence) => !mayWork(sentence, vocabulary))
}

/** Whether words begin as steps do: with a stitch, chains, or how many of them. */
export function beginsWithWork(words: readonly Word[], vocabulary: Vocabulary): boolean {
  const [first, second] = words
  if (first === undefined) return false
  if (first.kind === 'number') {
    return second !== undefined && (isStitch(second, vocabulary) || /^(?:inc|dec|ch|chs)$/.test(second.text))
  }
  return isStitch(first, vocabulary) || /^(?:ch|chain|sk|skip|miss|inc|dec|\*|\()$/.test(first.text)
}
