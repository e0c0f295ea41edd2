import { baby } from './body-baby.ts'
import { child } from './body-child.ts'
import { childHand } from './body-child-hand.ts'
import { foot } from './body-foot.ts'
import { hand } from './body-hand.ts'
import { head } from './body-head.ts'
import { men } from './body-men.ts'
import type { BodyTable } from './body-table.ts'
import { women } from './body-women.ts'

/**
 * The body tables by the names that a draft uses. Children and youth share one table, as published; which of its sizes
 * are called youth (from 10 or from 12) is not known, so both names reach all of them.
 */
export const bodyTables: ReadonlyMap<string, BodyTable> = new Map([
  ['head', head],
  ['women', women],
  ['woman', women],
  ['men', men],
  ['man', men],
  ['child', child],
  ['children', child],
  ['youth', child],
  ['baby', baby],
  ['hand', hand],
  ['child hand', childHand],
  ['foot', foot],
])
