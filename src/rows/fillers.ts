import type { Reader } from './reader.ts'
import { numberAt, take, textAt } from './reader.ts'

/*
 * What may stand between two steps without meaning anything.
 */

const separators = [',', ';', '.', ':', '-', '–', '→']
const fillers = [
  'work',
  'make',
  'crochet',
  'then',
  'and',
  'also',
  'ending',
  'end',
  'now',
  'worked',
  'place',
  'you',
  'but',
  'stop',
]

const participles = ['working', 'making', 'placing', 'doing', 'start', 'starting', 'begin', 'beginning']

/** `working 3 sc in each corner`, where stitches follow at once: the word adds nothing. */
function takeParticiple(reader: Reader): boolean {
  if (!participles.includes(textAt(reader))) return false
  const next = textAt(reader, 1)
  const { dictionary, specials } = reader.vocabulary
  const makes =
    numberAt(reader, 1) !== null || /^[([]$/.test(next) || dictionary.stitches.has(next) || specials.has(next)
  return makes && take(reader, ...participles)
}

/** `ending in top of tch`: no stitch, but where the last one goes */
function leadsToPlace(reader: Reader): boolean {
  return /^(?:in|at|on)$/.test(textAt(reader)) && /^(?:top|the|last|first|3rd|4th|2nd|tch)$/.test(textAt(reader, 1))
}

const sideEnding =
  /^(?:end|ends|ending|finish|finishing) (?:with|on|after) (?:an? |the )?(?:rs|ws|(?:right|wrong) side) (?:row|rnd|round)(?= |$)/

/** `turn, ending with a WS row`: which row is last, and nothing to be made. */
function takeSideEnding(reader: Reader): boolean {
  if (!/^(?:end|finish)/.test(textAt(reader))) return false
  const next = Array.from({ length: 7 }, (_, ahead) => textAt(reader, ahead)).join(' ')
  const found = sideEnding.exec(next)
  if (found === null) return false
  reader.at += found[0].split(' ').length
  return true
}

/** Passes marks and words between two steps. */
export function passFillers(reader: Reader): void {
  for (;;) {
    if (takeSideEnding(reader)) continue
    const from = reader.at
    if (!take(reader, ...separators) && !take(reader, ...fillers) && !takeParticiple(reader)) return
    // `place marker` is a remark, `ending with` and `ending in` lead to a stitch.
    const filler = reader.words[from]?.text
    if ((filler === 'ending' || filler === 'end') && !leadsToPlace(reader)) take(reader, 'with', 'in', 'by')
    if (filler === 'place' && /^(?:a|marker|markers|st)$/.test(textAt(reader))) {
      reader.at = from
      return
    }
  }
}
