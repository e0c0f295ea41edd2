import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { EntryWork } from '../entry-row.ts'
import { labelFor } from '../entry-row.ts'
import { rowName } from '../findings.ts'
import type { Departure } from '../habits.ts'

/** How a row must be read to come out, and what to write if it is meant so. */
interface Otherwise {
  readonly how: string
  readonly write: string
}

function openingOtherwise(chains: string, before: string, option: number): Otherwise | null {
  const which = before === 'opening' ? `its opening ch ${chains}` : `the ${chains} chains skipped at its beginning`
  const verb = before === 'opening' ? ['counts', 'does not count'] : ['count', 'do not count']
  const said = ['“(counts as 1 st)”', '“(does not count as a st)”'][option]
  if (said === undefined) return null
  return { how: `${which} ${verb[option] ?? ''} as a stitch`, write: `${said} after the chain` }
}

/** By habit, for each way of taking it. */
const others: Readonly<Record<string, readonly Otherwise[]>> = {
  times: [
    { how: 'the number of repeats does not count the first time', write: '“more times”' },
    { how: 'the number of repeats counts the first time', write: '“times in all”' },
  ],
  each: [
    { how: 'the number before a stitch is meant for each of the next places', write: '“in each of next”' },
    { how: 'the number before a stitch is meant for all of the next places together', write: 'the stitch without it' },
  ],
  'first skip': [
    {
      how: 'the stitch skipped at its beginning is the one that the opening chain stands on',
      write: '“skip first st”',
    },
    { how: 'the stitch skipped at its beginning is the one after the opening chain', write: '“skip next st”' },
  ],
  scope: [
    { how: 'the number of times belongs to its last step alone', write: 'brackets around that step' },
    { how: 'the number of times belongs to the whole list', write: 'brackets around the list' },
  ],
  'list times': [
    { how: 'the number of times belongs to the whole list', write: 'brackets around the list' },
    { how: 'the number of times belongs to its last step alone', write: 'brackets around that step' },
  ],
  last: [
    { how: 'the last stitches are counted without spaces', write: 'what is left in full' },
    { how: 'the last stitches are counted with the spaces between them', write: 'what is left in full' },
  ],
}

function otherwise({ habit, option }: Departure): Otherwise | null {
  const own = others[habit]?.[option]
  if (own !== undefined) return own
  const [before = '', chains = ''] = habit.split(' ')
  return before === 'opening' || before === 'skipped' ? openingOtherwise(chains, before, option) : null
}

/**
 * A row that comes out, but not in the way in which the rest of the pattern is written.
 *
 * @param told ways that have been told of this piece already
 */
export function habitFindings({ row, entry, departures }: EntryWork, told: Set<string>): readonly Diagnostic[] {
  const name = rowName(labelFor(row, entry.number))
  return departures.flatMap((departure) => {
    const other = otherwise(departure)
    const key = `${departure.habit} ${departure.option}`
    if (other === null || told.has(key)) return []
    told.add(key)
    return [diagnose('unlike-other-rows', row.stated?.at ?? row.steps, { row: name, ...other })]
  })
}
