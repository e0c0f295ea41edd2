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

function otherwise({ habit, option }: Departure): Otherwise | null {
  const [name = '', chains = ''] = habit.split(' ')
  if (name === 'opening' || name === 'skipped') return openingOtherwise(chains, name, option)
  if (name === 'times') {
    return option === 0
      ? { how: 'the number of repeats does not count the first time', write: '“more times”' }
      : { how: 'the number of repeats counts the first time', write: '“times in all”' }
  }
  return option === 0
    ? { how: 'the number before a stitch is meant for each of the next places', write: '“in each of next”' }
    : { how: 'the number before a stitch is meant for all of the next places together', write: 'the stitch without it' }
}

/** A row that comes out, but not in the way in which the rest of the pattern is written. */
export function habitFindings({ row, entry, departures }: EntryWork): readonly Diagnostic[] {
  const name = rowName(labelFor(row, entry.number))
  return departures.flatMap((departure) => {
    const other = otherwise(departure)
    if (other === null) return []
    return [diagnose('unlike-other-rows', row.stated?.at ?? row.steps, { row: name, ...other })]
  })
}
