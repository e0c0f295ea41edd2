import { asOrdinal } from '../../measure/index.ts'
import type { Edge, Leg, Passage, Run, Schedule } from './schedule.ts'

/**
 * A schedule in the trade's words, without a full stop:
 *
 *     dec 1 st at each end of every 4th row 6 times, then of every 6th row 3 times, then work 1 row even
 *     dec at neck edge of every row 5 sts once, 3 sts twice, 1 st 4 times
 *     work 4 rnds even, increase 20 evenly to 80 sts; work 5 rnds even, increase 20 evenly to 100 sts
 */
export function scheduleWords({ unit, passages }: Schedule): string {
  return passages.map((passage, index) => joint(passages[index - 1], passage) + passageWords(passage, unit)).join('')
}

function joint(before: Passage | undefined, passage: Passage): string {
  if (before === undefined) return ''
  if (passage.kind === 'around') return before.kind === 'around' ? '; ' : ', '
  return before.kind === 'around' ? '; ' : ', then '
}

function passageWords(passage: Passage, unit: Schedule['unit']): string {
  switch (passage.kind) {
    case 'even':
      return `work ${counted(passage.rows, unit)} even`
    case 'slope':
      return `${passage.change} 1 st at ${edgeWords(passage.edge, unit)} ${passage.legs.map((leg) => legWords(leg, unit)).join(', then ')}`
    case 'curve':
      return `dec at ${passage.edge} of every ${unit} ${passage.runs.map(runWords).join(', ')}`
    case 'around':
      return `increase ${passage.by} evenly to ${counted(passage.to, 'st')}`
  }
}

/** A round has no ends: its shaping stands at its beginning, or on both sides of it. */
function edgeWords(edge: Edge, unit: Schedule['unit']): string {
  if (unit === 'row') return edge
  return edge === 'each end' ? 'beg and end' : 'beg'
}

function legWords({ every, times }: Leg, unit: Schedule['unit']): string {
  return `of every ${every === 1 ? '' : `${asOrdinal(every)} `}${unit} ${timesWords(times)}`
}

function runWords({ stitches, times }: Run): string {
  return `${counted(stitches, 'st')} ${timesWords(times)}`
}

function counted(number: number, noun: string): string {
  return `${number} ${noun}${number === 1 ? '' : 's'}`
}

function timesWords(times: number): string {
  return ['once', 'twice'][times - 1] ?? `${times} times`
}
