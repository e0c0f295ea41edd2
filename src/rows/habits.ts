/*
 * How an author writes is settled once for a pattern: whether an opening chain counts, whether `repeat 6 times` counts
 * the first time. A single row that only comes out another way is worth a word.
 */

/** How choices that come up in many rows are taken, by habit; what stands for none is taken the usual way. */
export type Habits = ReadonlyMap<string, number>

export const noHabits: Habits = new Map()

/** Parts the name of a habit from the place in the row where it comes up. */
const parting = '|'

/** The key of a choice that is a matter of habit; `at` where it may come up more than once in a row. */
export function habitKey(habit: string, at: number | null = null): string {
  return at === null ? habit + parting : `${habit}${parting}${at}`
}

/** The habit that a choice belongs to; null for one that each row settles by itself. */
export function habitOf(key: string): string | null {
  const end = key.indexOf(parting)
  return end < 0 ? null : key.slice(0, end)
}

/** A row that only comes out by another way than the pattern's. */
export interface Departure {
  readonly habit: string
  readonly option: number
}

/** A pattern as it was worked by some habits. */
export interface Trial {
  readonly habits: Habits
  /** Choices that came up in some row, with how many ways each can be taken. */
  readonly met: ReadonlyMap<string, number>
  readonly departures: readonly Departure[]
  /** Rows that do not come out, or wait for one that does not. */
  readonly wrong: number
  /** Some row was worked and did not come out: not all of them wait for one that could not be read. */
  readonly faulty: boolean
}

/** How far a trial is from all rows coming out by its habits. */
function distance({ departures, wrong }: Trial): number {
  return departures.length + wrong
}

/** Rows that must gain before a habit that the trade is agreed on is taken the other way. */
const leastForFirm = 2
const mostRounds = 2
const mostTrials = 12

/** Habits that are taken another way together. */
type Change = readonly (readonly [habit: string, option: number])[]

/** What follows the first word of a habit: of chains that open a row and those skipped in the first one it is the same. */
function kin(habit: string): string {
  return habit.slice(habit.indexOf(' '))
}

/** What might be taken another way: what rows departed from, and where rows do not come out, all that came up. */
function changes(trial: Trial): readonly Change[] {
  const found = new Map<string, Change>()
  const add = (...change: Change): void => {
    found.set(change.join(), change)
  }
  for (const { habit, option } of trial.departures) add([habit, option])
  if (!trial.faulty) return [...found.values()]
  for (const [habit, options] of trial.met) {
    const others = [...trial.met.keys()].filter((other) => other > habit && kin(other) === kin(habit))
    for (let option = 0; option < options; option += 1) {
      if (option === trial.habits.get(habit)) continue
      add([habit, option])
      for (const other of others) add([habit, option], [other, option])
    }
  }
  return [...found.values()].slice(0, mostTrials)
}

/**
 * Works a pattern by the habits under which most rows come out. The usual ones stand where others are no better.
 *
 * @param isFirm whether the trade is agreed on a habit, so that one row does not unsettle it
 */
export function byHabits<T extends Trial>(work: (habits: Habits) => T, isFirm: (habit: string) => boolean): T {
  let best = work(noHabits)
  for (let round = 0; round < mostRounds && distance(best) > 0; round += 1) {
    const before = best
    for (const change of changes(before)) {
      const least = change.some(([habit]) => isFirm(habit)) ? leastForFirm : 1
      if (distance(before) < least) continue
      const own = work(new Map([...before.habits, ...change]))
      if (distance(own) <= distance(before) - least && distance(own) < distance(best)) best = own
    }
    if (best === before) break
  }
  return best
}
