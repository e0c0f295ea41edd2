import { cover } from '../diagnostic/index.ts'
import { withoutColours } from './colours.ts'
import { passFillers } from './fillers.ts'
import { asGroup, leaveLast, sweep } from './gather.ts'
import { inLayers, withoutLayers } from './layers.ts'
import { withoutLoops } from './loops.ts'
import { withMissed } from './miss-every.ts'
import { multiply, readMultiple } from './multiple.ts'
import { alongPhrase, crossingPhrase, passAside } from './phrase/aside.ts'
import { bracketPhrase } from './phrase/bracket.ts'
import { chainPhrase } from './phrase/chain.ts'
import { chainBetweenPhrase } from './phrase/chain-between.ts'
import { craftPhrase, endsAtPhrase } from './phrase/craft.ts'
import { besideSkipped } from './phrase/depth.ts'
import { endedByTail } from './phrase/endings.ts'
import { evenlyPhrase } from './phrase/evenly.ts'
import { frontedPhrase } from './phrase/fronted.ts'
import { increasePhrase } from './phrase/increase.ts'
import { markerPhrase } from './phrase/marker.ts'
import { numberAlonePhrase } from './phrase/number-alone.ts'
import { pickUpPhrase } from './phrase/pick-up.ts'
import { remarkPhrase, tipPhrase } from './phrase/remark.ts'
import type { Mark, Repeated } from './phrase/repeat.ts'
import { isMark, readPairedStar, readRepeat } from './phrase/repeat.ts'
import { ringPhrase } from './phrase/ring.ts'
import { skipPhrase } from './phrase/skip.ts'
import { joinPhrase, slipPhrase } from './phrase/slip.ts'
import { sourcePhrase } from './phrase/source.ts'
import { startingPhrase } from './phrase/starting.ts'
import { stitchPhrase } from './phrase/stitch.ts'
import { tailPhrase } from './phrase/tail.ts'
import { takeTogetherPhrase } from './phrase/take-together.ts'
import { timesFirstPhrase } from './phrase/times-first.ts'
import { togetherPhrase } from './phrase/together.ts'
import { fastenOffPhrase, leavePhrase, turnPhrase } from './phrase/turn.ts'
import type { Phrase, Reader, Unread, Vocabulary } from './reader.ts'
import { attempt, createReader, peek, spanSince, textAt } from './reader.ts'

import { withCounting, withFirstChain, withFirstSkip, withLeft, withRing } from './settled.ts'
import { spread } from './spread.ts'

import type { Step } from './step.ts'
import type { Stitch } from './terms/stitch.ts'
import type { Word } from './words.ts'
import { wordsOfText } from './words.ts'

/** All written forms of a step, in the order in which they are tried: the more words a form claims, the earlier. */
const phrases: readonly Phrase[] = [
  bracketPhrase,
  markerPhrase,
  craftPhrase,
  endsAtPhrase,
  tailPhrase,
  sourcePhrase,
  startingPhrase,
  crossingPhrase,
  chainBetweenPhrase,
  chainPhrase,
  evenlyPhrase,
  togetherPhrase,
  increasePhrase,
  skipPhrase,
  joinPhrase,
  slipPhrase,
  timesFirstPhrase,
  stitchPhrase,
  pickUpPhrase,
  numberAlonePhrase,
  takeTogetherPhrase,
  ringPhrase,
  turnPhrase,
  leavePhrase,
  fastenOffPhrase,
  frontedPhrase,
  alongPhrase,
  remarkPhrase,
  tipPhrase,
]

/** Steps of a row, or the words that stopped the reader. */
export type ReadSteps =
  | { readonly steps: readonly Step[]; readonly stitch: Stitch; readonly unread: null }
  | { readonly steps: null; readonly stitch: Stitch; readonly unread: Unread }

function remember(reader: Reader, at: number, expected: string, mark: string | null = null): void {
  const word = reader.words[at]
  if (word === undefined || (reader.unread !== null && reader.unread.at.start >= word.at.start)) return
  let end = at
  while (end + 1 < reader.end && !/^[,;.)\]]$/.test(reader.words[end + 1]?.text ?? '')) end += 1
  const last = reader.words[end] ?? word
  const shown = reader.words.slice(at, Math.min(end + 1, at + 8)).map((each) => (each.glued ? '' : ' ') + each.text)
  reader.unread = { at: cover(word.at, last.at), words: shown.join('').trim(), expected, mark }
}

/** A shaping phrase whose words differ by size is read once for each of them. */
function differentBySize(reader: Reader): readonly Step[] | null {
  const word = peek(reader)
  if (word?.kind !== 'bySize') return null
  const { vocabulary } = reader
  const options: (readonly Step[])[] = []
  for (const text of word.texts) {
    const inner = readSteps(wordsOfText(text ?? '', word.at, vocabulary.sizes), vocabulary, reader.stitch)
    if (inner.steps === null) return null
    options.push(inner.steps)
  }
  reader.at += 1
  return [{ kind: 'bySize', options, at: word.at }]
}

function item(reader: Reader): readonly Step[] | null {
  const special = attempt(reader, differentBySize)
  if (special !== null) return special
  for (const phrase of phrases) {
    if (!phrase.opens(reader)) continue
    const steps = attempt(reader, phrase.read)
    if (steps !== null) return steps
  }
  return null
}

function apply(steps: Step[], repeated: Repeated): void {
  steps.splice(repeated.from)
  steps.push(repeated.step)
}

/** `sc, inc, around`: all that stands before it, to the end of the row. */
function overRow(reader: Reader, steps: Step[]): boolean {
  const after = reader.words[reader.at + 1]?.text ?? '.'
  if (steps.length === 0 || !/^[,;.)]$/.test(after)) return false
  const from = reader.at
  reader.at += 1
  const times = { kind: 'until', until: { kind: 'end' } } as const
  apply(steps, { from: 0, step: { kind: 'repeatAll', body: [...steps], times, at: spanSince(reader, from) } })
  return true
}

/** Stars and `rep from *`. True when something was read, null when the words can't be. */
function marks(reader: Reader, steps: Step[], open: Mark[]): boolean | null {
  const text = textAt(reader)
  if (isMark(text)) {
    const paired = readPairedStar(reader, steps, open)
    if (paired === null) {
      open.push({ name: text, step: steps.length, close: null })
      reader.at += 1
    } else if (paired !== 'closed') apply(steps, paired)
    return true
  }
  if (/^(?:around|across)$/.test(text)) return overRow(reader, steps)
  if (!/^rep/.test(text)) return false
  const from = reader.at
  const repeated = readRepeat(reader, steps, open)
  if (repeated === null) {
    reader.at = from
    return false
  }
  if ('missing' in repeated) {
    reader.at = from
    remember(reader, from, `a ${repeated.missing} that opens the repeat`, repeated.missing)
    return null
  }
  apply(steps, repeated)
  return true
}

function readSequence(reader: Reader, end: number): readonly Step[] | null {
  const outer = reader.end
  reader.end = end
  const steps: Step[] = []
  const open: Mark[] = []
  let whole = true
  for (passFillers(reader); whole && reader.at < end; passFillers(reader)) {
    const from = reader.at
    const marked = marks(reader, steps, open)
    if (marked === true) continue
    const added = marked === null ? null : item(reader)
    if (added === null || reader.at === from) {
      remember(reader, from, 'a stitch, chain, skip or repeat')
      whole = false
    } else {
      const start = open.at(-1)?.step ?? 0
      const looped = inLoops(reader, added, from)
      const multiple = readMultiple(reader, open.length > 0)
      const group =
        multiple === null
          ? asGroup(steps, looped, start, saysAll(reader, from))
          : multiply(steps, looped, start, multiple)
      steps.push(...group)
      endedByTail(steps)
      sweep(steps, start)
      leaveLast(steps, start)
      spread(steps, start)
      const deep = besideSkipped(steps)
      if (deep !== null) steps.splice(-2, 1, deep)
      passAside(reader)
    }
  }
  reader.end = outer
  return whole ? steps : null
}

/** The loop that the words of an item name, or one that was named before them for all that follows. */
function inLoops(reader: Reader, steps: readonly Step[], from: number): readonly Step[] {
  if (!reader.namesLoops) return steps
  const own = reader.words.slice(from, reader.at).find((word) => word.loop !== undefined)
  for (; reader.heard < reader.at; reader.heard += 1) {
    const word = reader.words[reader.heard]
    if (word?.loopOn === true) reader.loop = word.loop ?? null
  }
  const loop = own?.loop ?? reader.loop ?? undefined
  return loop === undefined ? steps : steps.map((step) => ({ ...step, loop }))
}

/** `all in next sp` */
function saysAll(reader: Reader, from: number): boolean {
  return reader.words.slice(from, reader.at).some((word) => word.text === 'all')
}

/**
 * Reads words as steps. Nothing is guessed: words that no form takes are given back as `unread`.
 *
 * @param stitch what an `inc` means when the row itself names no stitch
 */
export function readSteps(words: readonly Word[], vocabulary: Vocabulary, stitch: Stitch | null): ReadSteps {
  const { words: own, layered } = withoutLayers(words)
  const reader = createReader(withoutLoops(withoutColours(own)), vocabulary, readSequence, stitch)
  const steps = readSequence(reader, reader.end)
  if (steps !== null) {
    const whole = withLeft(withFirstSkip(withFirstChain(withRing(withCounting(withMissed(steps, reader.stitch))))))
    return { steps: layered ? inLayers(whole) : whole, stitch: reader.stitch, unread: null }
  }
  const fallback = { at: spanSince(reader, 0), words: words[0]?.text ?? '', expected: 'steps', mark: null }
  return { steps: null, stitch: reader.stitch, unread: reader.unread ?? fallback }
}
