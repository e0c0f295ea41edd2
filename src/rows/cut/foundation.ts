import type { Word } from '../words.ts'

const begins =
  /^(?:ch|chs|chain|make|work|start|starting|begin|beginning|beg|commence|commencing|cast|foundation|base|using|with|loosely|form|crochet|create|to|wind|a|on|over|set-up|from|holding|adjustable|magic|sliding|slip|in|at)$/
const chain = /^(?:ch|chs|chain|chains)$/
const ring = /^(?:ring|circle|loop)$/
const talk =
  /^(?:counts?|counted|counting|throughout|always|each|every|instead|if|when|may|can|should|note|turning|t-ch|tch|is|are|row|rows|round|rounds)$/

/** Whether words that could not be read sound like the beginning of a piece: a number of chains, or a ring. */
export function soundsLikeFoundation(words: readonly Word[]): boolean {
  const [first] = words
  if (first === undefined || words.length > 40 || words.some(({ text }) => talk.test(text))) return false
  if (!(begins.test(first.text) || first.kind === 'number')) return false
  return words.some(({ text }, at) => {
    if (ring.test(text)) return true
    if (text === 'cast') return words.slice(at, at + 4).some(({ kind }) => kind === 'number')
    if (chain.test(text) && words[at + 1]?.text === 'of' && words[at + 2]?.kind === 'number') return true
    return chain.test(text) && [at - 1, at + 1, at + 2].some((near) => words[near]?.kind === 'number')
  })
}

const counts = /^(?:counts?|counted|does|do|doesn['’]t|don['’]t|is|isn['’]t|will|always|never)$/

/** `Ch 2 does not count as a stitch.`, `Ch 3 counts as dc throughout.`: said of chains, and none is made. */
export function speaksOfChain(words: readonly Word[]): boolean {
  const [first, second, third] = words
  if (first === undefined || !chain.test(first.text) || second?.kind !== 'number') return false
  return counts.test(third?.text ?? '')
}

/** `Work same as back to armholes.`: the rows of another piece, which are not known here. */
export function soundsLikeOtherPiece(words: readonly Word[]): boolean {
  const [first] = words
  if (!/^(?:work|make|crochet|begin|same|as|foll|follow|ch|start)$/.test(first?.text ?? '') || words.length > 30)
    return false
  const likens = words.findIndex(({ text }) => /^(?:as|same|like)$/.test(text))
  const piece =
    /^(?:back|front|sleeve|body|left|right|first|other|one|mitten|sock|leg|arm|panel|side|square|motif|piece)$/
  return (
    likens >= 0 &&
    words.slice(likens).some(({ text, kind }) => piece.test(text) || (kind === 'number' && text === '1st'))
  )
}
