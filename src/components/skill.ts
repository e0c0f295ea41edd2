import type { Pattern } from '../pattern/pattern.ts'

/** Project levels by the names that the yarn trade publishes them under. */
export const skillNames = {
  basic: 'Basic',
  easy: 'Easy',
  intermediate: 'Intermediate',
  complex: 'Complex',
} satisfies Record<NonNullable<Pattern['skill']>, string>
