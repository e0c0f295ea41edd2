import type { Worked } from '../attempt.ts'
import type { ReadRow } from '../cut.ts'
import type { CountingRule, Stated, StatedItem } from './item.ts'
import { statedFor } from './item.ts'
import { verdictOn } from './meaning.ts'
import { byRule, kindWithoutDecreases, kindWithoutOpening, noDecreases, totalRules } from './ways.ts'

/** A row that states a count, as it was worked: what tells how the author counts. */
export interface Evidence {
  readonly stated: Stated
  readonly worked: readonly (Worked | null)[]
  readonly checked: (size: number) => boolean
  /** A wrong count was told of this row; it does not only follow from an earlier one. */
  readonly told: boolean
}

const noOpening: CountingRule = 'no opening'
/** Rules that speak of the stitches of a kind too, not only of all. */
const ofKinds = new Set<CountingRule>([noOpening, noDecreases])

function speaks(item: StatedItem, rule: CountingRule): boolean {
  if (item.by !== null) return false
  return item.of.kind === 'key' ? ofKinds.has(rule) : item.of.kind === 'total' && rule !== noDecreases
}

function comesOut(item: StatedItem, rule: CountingRule, stated: number, worked: Worked): boolean {
  if (item.of.kind === 'key') {
    const own = rule === noDecreases ? kindWithoutDecreases : kindWithoutOpening
    return stated === own(item.of.key, worked)
  }
  return stated === byRule(rule, worked)
}

/** Whether a row counts by a rule for every size; null where it has nothing that the rule speaks of. */
function countsBy({ stated, worked, checked }: Evidence, rule: CountingRule): boolean | null {
  const items = stated.items.filter((item) => speaks(item, rule))
  let found: boolean | null = null
  for (const [size, result] of worked.entries()) {
    if (result === null || result.stop !== null || !checked(size)) continue
    for (const item of items) {
      const number = statedFor(item, size)
      if (number === null) continue
      if (!comesOut(item, rule, number, result)) return false
      found = true
    }
  }
  return found
}

function countsPlainly({ stated, worked, checked }: Evidence): boolean {
  return worked.every(
    (result, size) =>
      result === null ||
      result.stop !== null ||
      !checked(size) ||
      stated.items.every((item) => verdictOn(item, stated, result, size) !== 'differs'),
  )
}

interface Score {
  readonly rule: CountingRule
  readonly right: number
  readonly wrong: number
  /** Rows that come out by this rule and not by the usual one, and the other way round. */
  readonly gained: number
  readonly lost: number
}

function scoreOf(rule: CountingRule, evidence: readonly Evidence[], plain: ReadonlyMap<Evidence, boolean>): Score {
  let [right, wrong, gained, lost] = [0, 0, 0, 0]
  for (const each of evidence) {
    const counts = countsBy(each, rule)
    if (counts === null) continue
    const usual = plain.get(each) === true
    if (counts) right += 1
    else wrong += 1
    // A foundation that is one too long looks like an opening chain that is not counted: only what is told by itself tells.
    if (counts && !usual && (rule !== noOpening || each.told)) gained += 1
    if (!counts && usual) lost += 1
  }
  return { rule, right, wrong, gained, lost }
}

/** Rows that must bear a rule out before it is believed, and how many may speak against it. */
const leastGained = 2
const mostAgainst = 1 / 3
/** Rules that a pattern is worked by once more, to see. */
const mostTried = 3

/** Whether a rule is worth a try: what follows from rows that were worked by another may only come out when it is. */
function isWorthTrying({ rule, gained, lost }: Score): boolean {
  return gained >= (ofKinds.has(rule) ? leastGained : 1) && lost <= gained * mostAgainst
}

/** Kinds of which a bare number may be the count: `(12)` for twelve shells. */
function kindsIn(evidence: readonly Evidence[]): readonly CountingRule[] {
  const keys = new Set(evidence.flatMap(({ worked }) => worked.flatMap((result) => [...(result?.tally.keys() ?? [])])))
  return [...keys, 'space'].map((key) => `only ${key}`)
}

/**
 * Ways in which the author of a pattern may count, other than the usual one, the likeliest first: what rows that state a
 * count bear out. None where the usual way holds.
 */
export function likelyRules(evidence: readonly Evidence[]): readonly CountingRule[] {
  const plain = new Map(evidence.map((each) => [each, countsPlainly(each)] as const))
  if (evidence.filter((each) => plain.get(each) === false).length < leastGained) return []
  const rules = [...totalRules.filter((rule) => rule !== 'stitches'), noDecreases, ...kindsIn(evidence)]
  const scores = rules.map((rule) => scoreOf(rule, evidence, plain)).filter(isWorthTrying)
  return scores
    .toSorted((first, second) => second.right - first.right)
    .slice(0, mostTried)
    .map(({ rule }) => rule)
}

/** How many rows agree with their stated counts, and how many do not. */
export interface Agreement {
  readonly agreeing: number
  readonly differing: number
}

/** Whether a rule, once the pattern has been worked by it, is the author's: all or nearly all rows bear it out. */
export function isBorneOut(usual: Agreement, own: Agreement): boolean {
  const gained = own.agreeing - usual.agreeing
  return gained >= leastGained && own.differing < usual.differing && own.differing <= own.agreeing * mostAgainst
}

function countedBy(stated: Stated, rule: CountingRule): Stated {
  return { ...stated, items: stated.items.map((item) => (speaks(item, rule) ? { ...item, by: [rule] } : item)) }
}

/** Rows with their counts taken by the author's rule, where they do not say themselves how they count. */
export function rowsCountedBy(rows: readonly ReadRow[], rule: CountingRule): readonly ReadRow[] {
  return rows.map((row) => ({
    ...row,
    stated: row.stated === null ? null : countedBy(row.stated, rule),
    run: row.run.map((each) => countedBy(each, rule)),
  }))
}
