import type { Word } from '../words.ts'

const chain = /^(?:ch|chs|chain|chains)$/
const marks = /^[,;.:]$/
const works =
  /^(?:ch|chs|chain|chains|each|every|next|first|last|same|miss|skip|sk|rep|repeat|turn|ring|circle|hook|inc|dec|increase|decrease|\*|\(|\[)$/
const closes = /^(?:join|joined|joining|unite|united|uniting)$/
const lead = /^(?:and|then|which|the|ends|ends?|into|in|to|a|an|form|so|as|ring|circle|round|it|them|up|together|both)$/

/** The clauses of some words, without the marks between them. */
function clausesOf(words: readonly Word[]): readonly (readonly Word[])[] {
  const clauses: Word[][] = [[]]
  for (const word of words) {
    const last = clauses.at(-1)
    if (marks.test(word.text) || word.text === 'and') clauses.push([])
    else last?.push(word)
  }
  return clauses.filter((clause) => clause.length > 0)
}

/** `in amber`, `or the length required`, `work backwards and forwards`: nothing in it is a step. */
function saysNoStep(clause: readonly Word[]): boolean {
  return clause.every((word) => (word.kind === 'word' && !works.test(word.text)) || /^['’-]$/.test(word.text))
}

function isJoin(clause: readonly Word[]): boolean {
  return (
    clause.some(({ text }) => closes.test(text)) && clause.every(({ text }) => closes.test(text) || lead.test(text))
  )
}

/** The chain: `ch 80`, `12 chain`, `ch of 133`. */
function chainIn(
  words: readonly Word[],
): { readonly from: number; readonly end: number; readonly number: Word } | null {
  for (const [at, word] of words.entries()) {
    const next = words[at + 1]?.text === 'of' || words[at + 1]?.text === 'on' ? at + 2 : at + 1
    const after = words[next]
    if (chain.test(word.text) && after?.kind === 'number' && !after.ordinal) {
      return { from: at, end: next + 1, number: after }
    }
    if (word.kind === 'number' && !word.ordinal && chain.test(words[at + 1]?.text ?? '')) {
      return { from: at, end: at + 2, number: word }
    }
  }
  return null
}

/**
 * The chain of a beginning and whether it is joined, where all else that is said makes nothing; null where more is.
 *
 *     With black silk cast on a chain of 80, or the length required; unite, for the wrist.
 *     ch 80. join
 */
export function essentialBeginning(words: readonly Word[]): readonly Word[] | null {
  const found = chainIn(words)
  if (found === null || !clausesOf(words.slice(0, found.from)).every(saysNoStep)) return null
  const noun = /^(?:sts?|stitch|stitches|loops?)$/.test(words[found.end]?.text ?? '') ? 1 : 0
  const clauses = clausesOf(words.slice(found.end + noun))
  if (!clauses.every((clause) => isJoin(clause) || saysNoStep(clause))) return null
  const { at } = found.number
  const word = (text: string, kind: 'word' | 'mark'): Word => ({ at, glued: false, kind, text })
  const joined = clauses.some(isJoin) ? [word('.', 'mark'), word('join', 'word')] : []
  return [word('ch', 'word'), found.number, ...joined]
}
