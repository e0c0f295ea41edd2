import type { Span } from '../diagnostic/index.ts'
import type { Fabric, Worked } from './attempt.ts'
import type { Kinds } from './fabric.ts'
import { isEndless } from './findings.ts'
import { resized } from './resize.ts'
import type { Stated } from './stated/item.ts'
import { statedFor } from './stated/item.ts'
import { isMet, speaksOfAll, verdictOn, workedCount } from './stated/meaning.ts'
import type { Step } from './step.ts'

/**
 * Something that did not come out for a size and has been told. What follows from it in later rows is
 * not told again. `fabric` is the row as it should have been, to tell what follows from what does not;
 * null where that is not known.
 */
export interface Trouble {
  readonly at: Span
  readonly fabric: Fabric | null
  /** The steps that did not come out, and what their count lacks: rows that repeat them lack it every time. */
  readonly steps: readonly Step[] | null
  readonly by: number | null
}

/** What a row must come to for one size; `stated` null where its count belongs to another entry. */
export interface Asked {
  readonly size: number
  readonly stated: Stated | null
  readonly steps: readonly Step[] | null
}

function missesCount({ stated, size }: Asked, worked: Worked): boolean {
  return stated !== null && !isMet(stated, worked, size)
}

function leaves(worked: Worked): boolean {
  return worked.left > 0 && !worked.leftSaid
}

/** Whether a row does not come out: it stops, misses its count, or leaves stitches. */
export function isWrong(asked: Asked, worked: Worked): boolean {
  return worked.stop !== null || missesCount(asked, worked) || isEndless(worked) || leaves(worked)
}

/**
 * Whether what is wrong with a row follows from an earlier trouble. `ought` is the same row worked on
 * the fabric as it should have been; null where that is not known.
 */
export function follows(trouble: Trouble | null, asked: Asked, worked: Worked, ought: Worked | null): boolean {
  if (trouble === null) return false
  if (ought === null) return true
  if (ought.stop !== null) return worked.stop === null
  return !isWrong(asked, ought) || lacksAgain(trouble, asked, ought)
}

function repeats({ steps, by }: Trouble, asked: Asked): boolean {
  return by !== null && steps !== null && steps === asked.steps
}

/** Whether a row that repeats what did not come out lacks the same once more. */
function lacksAgain(trouble: Trouble, asked: Asked, ought: Worked): boolean {
  if (!repeats(trouble, asked)) return false
  return asked.stated === null || lacking(asked, ought) === trouble.by
}

/** What the stated count lacks against the worked one, where it speaks of all stitches of the row. */
function lacking({ stated, size }: Asked, worked: Worked): number | null {
  const whole = stated?.items.find((item) => speaksOfAll(item, worked))
  const number = whole === undefined ? null : statedFor(whole, size)
  return whole === undefined || number === null ? null : number - workedCount(whole, worked)
}

/** Whether the row states something, and that comes out. */
function isBorneOut({ stated, size }: Asked, worked: Worked): boolean {
  if (stated === null || worked.stop !== null) return false
  return stated.items.some(
    (item) => statedFor(item, size) !== null && verdictOn(item, stated, worked, size) === 'agrees',
  )
}

/** The fabric after a row with so many stitches more as it lacks; null where that is not known. */
function oughtFabric(kinds: Kinds, by: number | null, worked: Worked): Fabric | null {
  const { row } = worked.fabric
  const own = by === null || row === null ? null : resized(kinds, row, by)
  return own === null ? null : { ...worked.fabric, row: own }
}

/** The trouble of a size after a row; null when it has none, or a count has come out again. */
export function troubleAfter(
  kinds: Kinds,
  before: Trouble | null,
  asked: Asked,
  worked: Worked,
  ought: Worked | null,
  at: Span,
): Trouble | null {
  const wrong = isWrong(asked, worked)
  if (wrong && !follows(before, asked, worked, ought)) {
    const by = worked.stop === null ? lacking(asked, worked) : null
    return { at, fabric: oughtFabric(kinds, by, worked), steps: asked.steps, by }
  }
  if (before === null) return null
  if (!wrong && isBorneOut(asked, worked)) return null
  if (ought === null || ought.stop !== null) return { ...before, fabric: null }
  return { ...before, fabric: repeats(before, asked) ? oughtFabric(kinds, before.by, ought) : ought.fabric }
}
