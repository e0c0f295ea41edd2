import { isProse } from '../prose.ts'
import { readSteps } from '../read.ts'
import type { Reader } from '../reader.ts'
import { attempt, take, takeNumber, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { rowWord } from './extent.ts'

/** What begins a line of its own, also where the line before has no full stop. */
const finishing = /^(?:fasten|finish|break|cut|ftf)$/

/** `At end of Row 9, change to color B and ch 1, turn.` */
const endOfRow = /^(?:at|on|after) (?:the )?(?:end of )?(?:the )?(?:last|final|row|rnd|round|this)(?= |$)/
/** `You will have 60 dc on Row 10.` */
const nowHave = /^you (?:will|should|’ll|'ll|now|have)/

const idle = new Set<Step['kind']>(['remark', 'turn', 'fastenOff', 'join', 'leave', 'ring'])

/** Whether a step makes nothing of its own at the end of other rows. */
export function isIdle(step: Step, at: number, steps: readonly Step[]): boolean {
  if (idle.has(step.kind)) return true
  // `ch 1, turn` begins the row to come; `sl st in first st` closes a round.
  if (step.kind === 'chain') return steps.slice(at + 1).every((each) => each.kind === 'turn' || each.kind === 'remark')
  return step.kind === 'slip'
}

/** `72 rows worked.`: how many rows that were. */
function passRowCount(reader: Reader): true | null {
  while (take(reader, '.', ',', ';', '–', '-', '=', '(', '[', '/'));
  take(reader, 'a', 'total')
  take(reader, 'total', 'of')
  take(reader, 'of')
  if (takeNumber(reader) === null || !rowWord.test(textAt(reader))) return null
  reader.at += 1
  take(reader, 'worked', 'total', 'made', 'completed', 'in')
  take(reader, 'all', 'total')
  while (take(reader, ')', ']', '/'));
  return /^[.,;]?$/.test(textAt(reader)) ? true : null
}

/**
 * What stands after a row's words have said all: turns and joins, which belong to the last row, and remarks.
 *
 *     Rep Row 2. Do not fasten off.
 *                ^
 *
 * @returns null where something more would have to be worked
 */
export function readTail(reader: Reader): readonly Step[] | null {
  const from = reader.at
  attempt(reader, passRowCount)
  while (take(reader, '.', ',', ';', ':', '–', '-'));
  if (reader.at >= reader.end) return []
  const before = reader.words[reader.at - 1]?.text ?? ''
  const parted = /^[.)\]]$/.test(before) || /^[([]$/.test(textAt(reader)) || finishing.test(textAt(reader))
  if (reader.at === from && !parted) return null
  const rest = reader.words.slice(reader.at, reader.end)
  const opening = rest
    .slice(0, 6)
    .map(({ text }) => text)
    .join(' ')
  if (endOfRow.test(opening) || nowHave.test(opening)) {
    reader.at = reader.end
    return []
  }
  const { steps } = readSteps(rest, reader.vocabulary, reader.stitch)
  const works = steps === null ? !isProse(rest, reader.vocabulary) : !steps.every(isIdle)
  if (works) return null
  reader.at = reader.end
  return (steps ?? []).filter((step) => step.kind !== 'remark')
}
