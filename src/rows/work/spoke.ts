import type { Span } from '../../diagnostic/index.ts'
import { forSize } from '../count.ts'
import type { Target, Where } from '../step.ts'
import { cutTo } from './lay.ts'
import type { Stop, Work } from './state.ts'
import { add } from './tally.ts'

type FromHook = Extract<Where, { readonly kind: 'fromHook' }>

/** Chains that the row has just made, or has opened with; 0 where the hook stands elsewhere. */
function chainsOnHook(work: Work): number {
  if (work.opening !== null) return work.below?.circular === true ? work.opening.chains : 0
  const kind = work.kinds.list[work.made.places.at(-1) ?? -1]
  return kind?.what === 'space' ? kind.chains : 0
}

/** Takes back the space that the chains were taken for. */
function takeChains(work: Work, chains: number): void {
  if (work.opening !== null) {
    work.opening = null
    return
  }
  cutTo(work.made, work.made.places.length - 1)
  add(work.tally, `space:${chains}`, -1)
}

/**
 * Whether words from the hook go down the chain that has just been made, as for a petal, a spoke or hair: the stitches
 * after them go down it too, until it is used up. A slip stitch in the last of a few chains closes a picot instead.
 */
export function beginsSpoke(work: Work, where: FromHook, slips: boolean): boolean {
  const chains = chainsOnHook(work)
  const nth = forSize(where.nth, work.size)
  if (work.below === null || work.below.foundation || nth < 1 || nth > chains) return false
  return slips ? nth === 2 && chains > 2 : true
}

/** Goes to the chain from the hook; `uses` it, or stands before it. */
export function beginSpoke(work: Work, where: FromHook, uses: boolean): void {
  const chains = chainsOnHook(work)
  takeChains(work, chains)
  work.into = []
  work.spoke = chains - forSize(where.nth, work.size) + (uses ? 0 : 1)
}

function isChain(of: Target): boolean {
  return of.every((accept) => accept.kind === 'chain')
}

/** No noun is named: what comes next is meant. */
function isUnsaid(of: Target): boolean {
  return of.every((accept) => accept.kind === 'stitch' && !accept.said)
}

/** How many chains of the spoke a phrase goes into; null where it speaks of the row below again. */
function along(work: Work, where: Where): number | null {
  if (where.kind === 'each') return isChain(where.of) || isUnsaid(where.of) ? work.spoke : null
  if (where.kind === 'last') return isChain(where.of) && forSize(where.count, work.size) === 1 ? 1 : null
  if (where.kind !== 'next') return null
  const asked = forSize(where.count, work.size)
  if (isChain(where.of)) return asked
  return isUnsaid(where.of) && asked <= work.spoke ? asked : null
}

/** Down the spoke as far as its chains go; undefined where the row goes on in the row below. */
export function downSpoke(
  work: Work,
  where: Where,
  at: Span,
  inPlaces: (places: number) => Stop | null,
): Stop | null | undefined {
  if (work.spoke === 0) return undefined
  const asked = along(work, where)
  if (asked === null) {
    work.spoke = 0
    return undefined
  }
  if (asked > work.spoke) return { why: 'too few', at, wanted: `${asked} chains`, there: work.spoke }
  work.spoke = where.kind === 'last' ? 0 : work.spoke - asked
  return inPlaces(asked)
}
