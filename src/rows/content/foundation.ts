import type { Word } from '../words.ts'

/*
 * How a piece is begun, in the many wordings of it: all of them come down to `ch 60`, `join`, `magic ring`.
 */

const chainWord = /^(?:ch|chs|chain|chains)$/
const afterNumber = /^(?:ch|chs|chain|chains|sts?|stitch|stitches|loops?)$/
const hand = /^(?:loosely|tightly|firmly|very|quite|fairly|slightly|more)$/

/** Words of a beginning that tell with what, where and how: no stitch and no place is among them. */
const leads =
  /^(?:loosely|make|making|work|working|start|starting|started|begin|beginning|beg|commence|commencing|crochet|create|using|use|with|w|at|to|from|in|on|over|the|a|an|and|of|for|lower|upper|bottom|top|left|right|front|back|neck|edge|side|end|cuff|border|band|strap|center|centre|main|contrast|contrasting|color|colour|yarn|shade|mc|cc|a|b|c|d|e|hook|mm|cm|no|size|larger|smaller|large|small|holding|held|two|2|strands?|double|together|doubled|leaving|long|tail|foundation|base|new|first|second|set-up|following|row|by|waist|hem|toe|heel|crown|brim|body|sleeve|straight|row|length|one|thread|cotton|wool|needle|steel|crochet|g|h|i|j|k|us|uk|metric|color|colours|colors|initial)$/
const mostLead = 24

function textOf(words: readonly Word[], at: number): string {
  return words[at]?.text ?? ''
}

function isNumber(word: Word | undefined): boolean {
  return word?.kind === 'number' && !word.ordinal
}

interface Core {
  readonly from: number
  readonly end: number
  readonly number: Word
  readonly chain: Word
}

/** `ch 60`, `chain: 60 sts`, `ch loosely 60`, `a chain of 60`, `60 ch`, `cast on 60` */
function coreAt(words: readonly Word[], at: number): Core | null {
  const word = words[at]
  if (word === undefined) return null
  const cast = word.text === 'cast' && textOf(words, at + 1) === 'on'
  let next = cast ? at + 2 : at + 1
  if (chainWord.test(word.text) || cast) {
    while (/^(?:[:-]|of)$/.test(textOf(words, next)) || hand.test(textOf(words, next))) next += 1
    const number = words[next]
    if (number === undefined || !isNumber(number) || (number.glued && textOf(words, next - 1) === '-')) return null
    const end = afterNumber.test(textOf(words, next + 1)) ? next + 2 : next + 1
    return { from: at, end: pastNoun(words, end), number, chain: { ...word, kind: 'word', text: 'ch' } }
  }
  const chain = words[at + 1]
  if (!isNumber(word) || chain === undefined || !chainWord.test(chain.text)) return null
  return { from: at, end: pastNoun(words, at + 2), number: word, chain: { ...chain, kind: 'word', text: 'ch' } }
}

function pastNoun(words: readonly Word[], at: number): number {
  return /^(?:sts?|stitches)$/.test(textOf(words, at)) ? at + 1 : at
}

/** `ch a multiple of 5 + 1 (sample: ch 26)`: the chain that is told beside the multiple. */
function sampleAt(words: readonly Word[], at: number): Core | null {
  const multiple = words.slice(at + 1, at + 5).some(({ text }) => /^(?:multiples?|any)$/.test(text))
  if (!multiple || !chainWord.test(textOf(words, at))) return null
  for (let next = at + 4; next < Math.min(words.length, at + mostLead); next += 1) {
    const core = coreAt(words, next)
    if (core !== null) return { ...core, from: at, end: textOf(words, core.end) === ')' ? core.end + 1 : core.end }
  }
  return null
}

/** Whether nothing but the circumstances of a beginning stand before a place. */
function isLead(words: readonly Word[], end: number): boolean {
  for (let at = 0; at < end; at += 1) {
    const word = words[at]
    if (word === undefined) return false
    const number = word.kind === 'number' && /^(?:mm|cm|strands?|hook|[a-z]\/?\d*)$/.test(textOf(words, at + 1))
    const ofHook = word.kind === 'number' && /^(?:\.|no|size|hook|\/|number)$/.test(textOf(words, at - 1))
    const mark = word.kind === 'mark' && /^[,.:()/–-]$/.test(word.text)
    if (!(number || ofHook || mark || leads.test(word.text))) return false
  }
  return true
}

/** The chain that a row begins with; null where it begins some other way. */
function coreOf(words: readonly Word[]): Core | null {
  for (let at = 0; at < Math.min(words.length, mostLead); at += 1) {
    const core = sampleAt(words, at) ?? coreAt(words, at)
    if (core !== null) return isLead(words, at) ? core : null
  }
  return null
}

/** Where the clause that a place stands in ends. */
function clauseEnd(words: readonly Word[], from: number): number {
  let depth = 0
  for (let at = from; at < words.length; at += 1) {
    const text = textOf(words, at)
    if (/^[([]$/.test(text)) depth += 1
    if (/^[)\]]$/.test(text)) {
      if (depth === 0) return at
      depth -= 1
    }
    if (depth === 0 && /^[,;.]$/.test(text)) return at
  }
  return words.length
}

function isTwist(words: readonly Word[], from: number, end: number): boolean {
  return words.slice(from, end).some(({ text }) => /^twist(?:ed|ing|s)?$/.test(text))
}

const joins = /^(?:join|joining|joined|unite|connect|close|form|sl|slip|ss|sl-st|sl st)$/

/** `join with a sl st to first ch to form a ring`, `sl st in first ch`, `with sl st, join`, `form a ring` */
function joinFrom(words: readonly Word[], from: number): number | null {
  let at = from
  while (/^(?:and|then|,|;|\.)$/.test(textOf(words, at))) at += 1
  if (textOf(words, at) === 'without') {
    const end = clauseEnd(words, at)
    if (!isTwist(words, at, end)) return null
    at = end
    while (/^[,;]$/.test(textOf(words, at))) at += 1
  }
  if (textOf(words, at) === 'with') {
    const end = clauseEnd(words, at)
    if (textOf(words, end + 1) === 'join') at = end + 1
  }
  const end = clauseEnd(words, at)
  const clause = words.slice(at, end)
  if (!joins.test(textOf(words, at)) || clause.some(isNumber)) return null
  const sound = clause.every(({ text }) => !/^(?:any|yarn|next|each|last|same|sp|space|sc|dc|hdc|tr)$/.test(text))
  const ring = clause.some(
    ({ text, kind }) => /^(?:join|unite|ring|circle|round|first|beg|beginning)$/.test(text) || kind === 'number',
  )
  return sound && ring ? end : null
}

/** Remarks of a beginning: multiples, colours, `loosely`, that it must not twist, what the chains are for. */
function pastRemarks(words: readonly Word[], from: number): number {
  let at = from
  for (;;) {
    const text = textOf(words, at)
    if (hand.test(text)) {
      at += 1
      continue
    }
    const marked = /^[,;.]$/.test(text) ? 1 : 0
    const next = at + marked
    const opens = textOf(words, next)
    if (/^[([]$/.test(opens)) {
      const close = clauseEnd(words, next + 1)
      const inside = words.slice(next + 1, close)
      if (
        !/^[)\]]$/.test(textOf(words, close)) ||
        !inside.some(({ text: word }) =>
          /^(?:multiples?|plus|twist|twisted|twisting|length|any|inches|cm|long|for|foundation|turning|approx|made|\+)$/.test(
            word,
          ),
        )
      )
        return at
      at = close + 1
      continue
    }
    const end = clauseEnd(words, next)
    if (end > next && isTwist(words, next, end)) {
      at = end
      continue
    }
    const said = marked === 0 && /^(?:in|with|using|for|or|plus|as)$/.test(opens)
    if (
      !said ||
      end - next > 10 ||
      words
        .slice(next, end)
        .some(({ text: word }) => /^(?:each|next|ring|hook|same|ch|sc|dc)$/.test(word) && word !== 'hook')
    )
      return at
    at = end
  }
}

/** `ch 25 + 1`: the chains to turn with belong to the chain. */
function withMore(words: readonly Word[], core: Core): Core {
  const more = words[core.end + 1]
  if (!/^(?:\+|plus)$/.test(textOf(words, core.end)) || more?.kind !== 'number' || core.number.kind !== 'number')
    return core
  const count = core.number.count.map((value, size) => (value === null ? null : value + (more.count[size] ?? 0)))
  const end = core.end + 2
  const noun = /^(?:ch|chs|chain|chains|sts?)$/.test(textOf(words, end)) ? end + 1 : end
  return { ...core, end: noun, number: { ...core.number, count } }
}

const ringWord = /^(?:ring|circle|loop)$/

/** `an adjustable ring`, `a sliding loop`: index after it, -1 for none. */
function ringEnd(words: readonly Word[]): number {
  for (let at = 0; at < Math.min(words.length, mostLead); at += 1) {
    const makes = /^(?:magic|adjustable|sliding|slip|double|slipped)$/.test(textOf(words, at))
    if (makes && ringWord.test(textOf(words, at + 1))) return isLead(words, at) ? at + 2 : -1
    if (makes && textOf(words, at + 1) === 'magic' && ringWord.test(textOf(words, at + 2)))
      return isLead(words, at) ? at + 3 : -1
  }
  return -1
}

function ringWords(words: readonly Word[]): readonly Word[] | null {
  const end = ringEnd(words)
  const last = words[end - 1]
  if (last === undefined) return null
  const word = (text: string): Word => ({ at: last.at, glued: false, kind: 'word', text })
  return [word('magic'), word('ring'), ...words.slice(end)]
}

/**
 * The words of a beginning in the plainest form; null where a row begins some other way.
 *
 *     With 4 mm hook and MC, make a chain of 60 sts. Being careful not to twist, join with sl st.
 *     ch 60. join.
 */
export function plainBeginning(words: readonly Word[]): readonly Word[] | null {
  const found = coreOf(words)
  if (found === null) return ringWords(words)
  const core = withMore(words, found)
  const after = pastRemarks(words, core.end)
  const joined = joinFrom(words, after)
  const rest = joined === null ? after : pastRemarks(words, joined)
  const stop: Word = { at: core.number.at, glued: false, kind: 'mark', text: '.' }
  const join: Word = { at: words[after]?.at ?? core.number.at, glued: false, kind: 'word', text: 'join' }
  const ring = joined === null ? [] : [stop, join]
  return [core.chain, core.number, ...ring, ...(rest < words.length ? [stop] : []), ...words.slice(rest)]
}
