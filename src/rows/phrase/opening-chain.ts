import type { Reader } from '../reader.ts'
import { attempt, numberAt, peek, take, textAt } from '../reader.ts'
import type { Where } from '../step.ts'
import { takePattern } from './pattern.ts'

const ordinal = '(?:\\d*(?:1st|2nd|3rd|\\dth|2d|3d)|second|third|fourth|fifth|sixth|seventh|eighth)'
const chain = '(?:chs?|chains?)'
const lead = '(?:beg|beginning|turning|starting|initial|joining|opening|first|t)'
const opening = `(?:the |this |that |a |skipped )*(?:${lead} )*(?:of )?(?:the )?(?:# (?:- )?${chain}(?: ${lead} ${chain})?|${chain}(?: (?:- )?#)?(?: ${lead} ${chain})?|tch|t-ch|turning-ch|beg-ch|turning(?: ${chain})?)`
const after =
  '(?: (?:first made|made at (?:the )?(?:beg|beginning|start)|at (?:the )?(?:beg|beginning|start)(?: of (?:the )?(?:row|rnd|round))?))?'
const spaceAhead = /^(?:sps?|spaces?|loops?|lps?|arch|arches|from)$/

/** `3rd ch of ch-3`, `3rd of 5ch`, `third st of the turning chain` */
const nthOf = new RegExp(
  `^(?:the )?${ordinal} (?:(?:of|${chain}|sts?|stitch|stitches) )*(?:of|in) ${opening}${after}(?= |$)`,
)
/** `top of beg ch-3`, `top st of 3ch`, `tip of turning chain` */
const topOf = new RegExp(
  `^(?:the )?(?:top|tip|head)(?: (?:sts?|stitch|${chain}|lp|loop))? of ${opening}${after}(?= |$)`,
)
/** `tch`, `turning chain`, `beg ch-3`, `ch-3 turning chain`; a bare `ch-3` is a space */
const named = new RegExp(
  `^(?:the )?(?:tch|t-ch|turning-ch|beg-ch|(?:beg|beginning|turning|starting) ch-(?:sp|space|lp|loop)|(?:${lead} )+(?:# (?:- )?)?${chain}(?: (?:- )?#)?|${chain} (?:- )?# (?:turning|beg|beginning) ${chain}|turning)${after}(?= |$)`,
)
/** `base of 3ch`, `st at base of beg ch` */
const base = new RegExp(
  `^(?:the )?(?:same )?(?:(?:sts?|stitch|place|${chain}|sc|dc|hdc|tr) )?(?:at )?(?:the )?(?:base|bottom|foot) of ${opening}${after}(?= |$)`,
)

/** The chains that the words give the opening chain; null for none. */
function chainsIn(reader: Reader, from: number): number | null {
  for (let at = from; at < reader.at; at += 1) {
    const word = reader.words[at]
    if (word?.kind === 'number' && !word.ordinal) return word.count[0] ?? null
  }
  return null
}

function beginsWithChain(reader: Reader, from: number): boolean {
  for (let at = from; at < reader.at; at += 1) {
    if (new RegExp(`^(?:${lead}|tch|t-ch)$`).test(reader.words[at]?.text ?? '')) return true
  }
  return false
}

function ofTop(reader: Reader): Where | null {
  const from = reader.at
  const nth = takePattern(reader, nthOf) !== null
  if (!nth && takePattern(reader, topOf) === null) return null
  if (spaceAhead.test(textAt(reader))) return null
  if (!nth || beginsWithChain(reader, from)) return { kind: 'turningChain', space: false }
  // `3rd of 5 ch`: the chain that the row below begins with, or the middle of a loop.
  return { kind: 'turningChain', space: false, loop: chainsIn(reader, from) }
}

function byName(reader: Reader): Where | null {
  const from = reader.at
  if (takePattern(reader, named) === null) return null
  const words = reader.words.slice(from, reader.at)
  const onlyFirst = words.every((word) => word.text !== 'tch') && words.some((word) => word.text === 'first')
  // `first ch` is a chain of the row below, `first ch-3` the one that opened it.
  const hyphen = words.some((word) => word.text === '-')
  if (onlyFirst && !hyphen && !words.some((word) => /^(?:beg|beginning|turning|starting)$/.test(word.text))) return null
  const joined = words.some((word) => /^ch-(?:sp|space|lp|loop)$/.test(word.text))
  const space = take(reader, 'sp', 'space', 'lp', 'loop') || joined
  if (onlyFirst && space) return null
  return take(reader, 'from') ? null : { kind: 'turningChain', space }
}

/**
 * The chain that a row or round begins with.
 *
 *     dc in top of beg ch-3     ss into 3rd of 5ch     dc in tch     1 tr in base of 3 ch
 *           ^
 */
export function readOpeningChain(reader: Reader): Where | null {
  const foot = attempt(reader, (inner) => (takePattern(inner, base) === null ? null : true))
  if (foot !== null) return { kind: 'same', start: true }
  if (peek(reader) === undefined || numberAt(reader) !== null) return null
  return attempt(reader, ofTop) ?? attempt(reader, byName)
}
