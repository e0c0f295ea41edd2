import type { Book } from './book.ts'
import type { ReadRow } from './cut.ts'
import type { Habits } from './habits.ts'
import { byHabits } from './habits.ts'
import type { CountingRule } from './stated/item.ts'
import type { Agreement } from './stated/rule.ts'
import { isBorneOut, likelyRules, rowsCountedBy } from './stated/rule.ts'
import { isFirmOpening } from './work/opening.ts'
import type { OpeningRules } from './work/state.ts'

function agreementOf({ rows }: Book): Agreement {
  const count = (agrees: boolean): number => rows.filter((row) => row.agrees === agrees).length
  return { agreeing: count(true), differing: count(false) }
}

type Working = (rows: readonly ReadRow[], habits: Habits) => Book

/** Who counts spaces as stitches counts them among the last stitches, too. */
function habitsBy(rule: CountingRule, habits: Habits): Habits {
  return rule === 'spaces' || rule === 'chains' ? new Map([...habits, ['last', 1]]) : habits
}

/** The rows as worked; by the author's own way of counting where nearly all of them bear it out. */
function countedByAuthor(book: Book, rows: readonly ReadRow[], work: Working): Book {
  const usual = agreementOf(book)
  let best = book
  for (const rule of likelyRules(book.evidence)) {
    const own = work(rowsCountedBy(rows, rule), habitsBy(rule, book.habits))
    const agreement = agreementOf(own)
    if (isBorneOut(usual, agreement) && agreement.agreeing > agreementOf(best).agreeing) best = own
    if (agreement.differing === 0) break
  }
  return best
}

/** Works the rows of a pattern in the way in which its author writes and counts, as far as the rows themselves tell. */
export function asAuthorWrites(rows: readonly ReadRow[], rules: OpeningRules, work: Working): Book {
  const book = byHabits(
    (habits) => work(rows, habits),
    (habit) => habit === 'each' || isFirmOpening(rules, habit),
  )
  return countedByAuthor(book, rows, work)
}
