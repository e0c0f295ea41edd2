import type { Diagnostic, Span } from '../diagnostic/index.ts'
import { cover, diagnose } from '../diagnostic/index.ts'
import type { Worked } from './attempt.ts'
import { printCount } from './count.ts'
import { printPlace } from './print.ts'
import type { RowJob } from './readings.ts'
import { otherRows, otherTimes } from './suggest.ts'
import type { Dictionary } from './terms/dictionary.ts'
import type { Stop } from './work/state.ts'

/** A row as a sentence speaks of it. */
export function rowName(label: string | null): string {
  return label ?? 'This row'
}

/** What helps to word findings: names of sizes, the draft's words, and what would come out instead. */
export interface Wording {
  readonly names: readonly string[]
  /** The draft's own words at a place. */
  readonly words: (at: Span) => string
  readonly dictionary: Dictionary
  /** The row as it was worked, to be worked otherwise. */
  readonly job: RowJob
}

interface RepeatFault {
  readonly at: Span
  readonly done: number
  readonly asked: number | null
  readonly left: number
  readonly uses: number
}

/** A repeat that does not come out, with the number to write, or the rows that it would fit. */
function repeatFinding(fault: RepeatFault, row: string, sizes: readonly number[], wording: Wording): Diagnostic {
  const { at, done, asked, left, uses } = fault
  const { names, job } = wording
  const instead = otherTimes(job, at, sizes, names)
  const fits = (instead === null ? otherRows(job, sizes[0] ?? 0) : null) ?? { fewer: null, more: null, chains: false }
  const first = sizes.length > 1 ? (names[sizes[0] ?? 0] ?? '') : ''
  const details = { row, sizes: sizesNamed(sizes, names), first, done, asked, left, uses, instead, ...fits }
  return diagnose('repeat-does-not-come-out', at, details, { sizes })
}

/** `12 dc, 4 ch-2 sps`: the places that the row below has for one size. */
function placesBelow(size: number, { job, dictionary }: Wording): string {
  const counts = new Map<string, number>()
  for (const place of job.fabrics[size]?.row?.places ?? []) {
    const kind = job.kinds.list[place]
    const shown = kind === undefined ? null : printPlace(kind, dictionary)
    if (shown !== null) counts.set(shown, (counts.get(shown) ?? 0) + 1)
  }
  return [...counts]
    .map(([shown, count]) => `${count} ${shown}${count > 1 && shown.endsWith(' sp') ? 's' : ''}`)
    .join(', ')
}

/** `behind`: the row below has such places, but what comes before these words has gone past them. */
function wantedBelow(wanted: string, below: string): { wanted: string; below: string; behind: boolean } {
  const chains = /^ch-(\d+) spaces?$/.exec(wanted)?.[1] ?? null
  const named = chains === null ? /\bch-\d+ sps?\b/ : new RegExp(`\\bch-${chains} sps?\\b`)
  return { wanted, below, behind: /spaces?$/.test(wanted) && !/between/.test(wanted) && named.test(below) }
}

const otherBase =
  /\b(?:hem|hems|braid|tape|net|linen|canvas|material|cloth|handkerchief|ribbon|hole|holes|selvage|selvedge|fabric)\b/i

/** Whether a row goes onto something that has no rows in the draft: an edge, a braid, a cloth, a piece begun elsewhere. */
function isOnOther({ job, words }: Wording): boolean {
  const steps = job.steps.find((each) => each !== null) ?? []
  const [first] = steps.filter((step) => step.kind !== 'remark' && step.kind !== 'turn')
  const [start, end] = [steps[0]?.at, steps.at(-1)?.at]
  if (first === undefined || start === undefined || end === undefined) return false
  const stands = first.kind === 'work' && first.where.kind === 'same'
  const joins = stands || (first.kind === 'slip' && first.yarn === true) || first.kind === 'repeatAll'
  return joins || otherBase.test(words(cover(start, end)))
}

/** The finding for a row that can't be worked; `words` gives what stands at a place. */
function stopFinding(stop: Stop, row: string, sizes: readonly number[], wording: Wording): Diagnostic {
  const { at } = stop
  const { words } = wording
  const extra = { sizes }
  switch (stop.why) {
    case 'too few':
      return diagnose('too-few-stitches', at, { row, words: words(at), wanted: stop.wanted, there: stop.there }, extra)
    case 'no such place':
      return diagnose(
        'no-such-place',
        at,
        { row, words: words(at), ...wantedBelow(stop.wanted, placesBelow(sizes[0] ?? 0, wording)) },
        extra,
      )
    case 'repeat':
      return repeatFinding(stop, row, sizes, wording)
    case 'unread':
      return diagnose('row-unread', at, { row, words: words(at), expected: stop.expected, instead: null }, extra)
    case 'goes nowhere':
      return diagnose('repeat-goes-nowhere', at, { row }, extra)
    case 'too many':
      return diagnose('row-too-long', at, { row, most: stop.most }, extra)
    case 'below zero':
      return diagnose('count-below-zero', at, { row, number: stop.number }, extra)
    case 'nothing there':
      return diagnose(isOnOther(wording) ? 'base-unknown' : 'nothing-below', at, { row }, extra)
  }
}

function sameStop(first: Stop, second: Stop): boolean {
  return first.why === second.why && first.at.start === second.at.start
}

/** One finding for each way in which sizes stop. */
export function stopFindings(worked: readonly (Worked | null)[], row: string, wording: Wording): readonly Diagnostic[] {
  const groups: { stop: Stop; sizes: number[] }[] = []
  worked.forEach((result, size) => {
    const stop = result?.stop ?? null
    if (stop === null) return
    const group = groups.find((each) => sameStop(each.stop, stop))
    if (group === undefined) groups.push({ stop, sizes: [size] })
    else group.sizes.push(size)
  })
  return groups.map(({ stop, sizes }) => stopFinding(stop, row, sizes, wording))
}

/** Whether a repeat to the end has left something over. */
export function isEndless(worked: Worked): boolean {
  const { stop, left, leftSaid, endless } = worked
  return stop === null && !leftSaid && endless !== null && endless.uses > 1 && left > endless.passed
}

/** `2 stitches`, `1 (1, 2) spaces` */
function printLeft(worked: readonly Worked[]): string {
  const parts = [
    [worked.map(({ left, leftSpaces }) => left - leftSpaces), 'stitch', 'stitches'],
    [worked.map(({ leftSpaces }) => leftSpaces), 'space', 'spaces'],
  ] as const
  return parts
    .filter(([counts]) => counts.some((count) => count > 0))
    .map(([counts, one, more]) => {
      const shown = printCount(counts)
      return `${shown} ${shown === '1' ? one : more}`
    })
    .join(' and ')
}

/** Stitches that are left on purpose, but not as many as the words say. */
export function leavesFindings(worked: readonly (Worked | null)[], row: string, at: Span): readonly Diagnostic[] {
  const sizes = worked.flatMap((result, size) => ((result?.leaves ?? null) === null ? [] : [size]))
  const leaves = sizes.flatMap((size) => worked[size]?.leaves ?? [])
  if (leaves.length === 0) return []
  const [said, left] = [printCount(leaves.map((each) => each.said)), printCount(leaves.map((each) => each.left))]
  return [diagnose('left-otherwise', at, { row, said, left }, { sizes })]
}

/** Stitches left over: an error after a repeat to the end, else a warning. */
export function leftFindings(
  worked: readonly (Worked | null)[],
  row: string,
  at: Span,
  isMismatch: (size: number) => boolean,
  wording: Wording,
): readonly Diagnostic[] {
  const sizes: number[] = []
  const repeats: { result: Worked; size: number }[] = []
  worked.forEach((result, size) => {
    if (result === null || result.stop !== null || result.left === 0 || result.leftSaid) return
    if (isEndless(result)) repeats.push({ result, size })
    else if (!isMismatch(size)) sizes.push(size)
  })
  const found: Diagnostic[] = []
  const [first] = repeats
  if (first?.result.endless) {
    const { at: place, done, uses } = first.result.endless
    const fault = { at: place, done, asked: null, left: first.result.left - first.result.endless.passed, uses }
    const concerned = repeats.map((each) => each.size)
    // Where a repeat without a mark begins is only supposed.
    const bare = wording.job.steps.some((steps) => steps?.some((step) => step.kind === 'repeatAll'))
    const leaves = { row, left: printLeft(repeats.map((each) => each.result)) }
    found.push(
      bare
        ? diagnose('bare-repeat-left', place, leaves, { sizes: concerned })
        : repeatFinding(fault, row, concerned, wording),
    )
  }
  if (sizes.length > 0) {
    const left = printLeft(sizes.flatMap((size) => worked[size] ?? []))
    found.push(diagnose('stitches-left', at, { row, left }, { sizes }))
  }
  return found
}

/** `S`, `S and L`, `S, M and L`; empty where all sizes are meant, or there is only one. */
export function sizesNamed(sizes: readonly number[], names: readonly string[]): string {
  if (names.length < 2 || sizes.length === names.length) return ''
  const texts = sizes.map((size) => names[size] ?? '')
  return texts.length < 2 ? texts.join() : `${texts.slice(0, -1).join(', ')} and ${texts.at(-1) ?? ''}`
}
