import type { PerSize } from '../../measure/index.ts'
import type { PlaceKind } from '../../rows/fabric.ts'
import { orderOf } from '../../rows/past.ts'
import type { FlatRow } from '../flat/laid.ts'
import type { Density, Plan } from '../plan.ts'
import { cornerCount } from './corners.ts'
import { motifPlan } from './motif.ts'
import type { Round } from './rounds.ts'
import { beginsClosed, endsClosed, flatRounds, roundsOf } from './rounds.ts'
import { type Ends, tubePlan } from './tube.ts'

/** What a piece in rounds is, the same for every size: how small a hole is no opening is a matter of degree. */
type Kind = { readonly kind: 'motif'; readonly corners: number } | ({ readonly kind: 'tube' } & Ends)

/** Whether its first round goes into stitches of another piece. */
function isPickedUp(rounds: readonly Round[], rows: readonly FlatRow[]): boolean {
  const into = rounds[0]?.row.trace().into.find((ref) => ref >= 0)
  return into !== undefined && rows.every(({ row }) => row.order !== orderOf(into))
}

function kindOf(
  rounds: readonly Round[],
  rows: readonly FlatRow[],
  kinds: readonly PlaceKind[],
  density: Density,
): Kind {
  const ratio = density.rows / density.stitches
  const first = beginsClosed(rounds, ratio)
  if (first && flatRounds(rounds, ratio) === rounds.length) {
    return { kind: 'motif', corners: cornerCount(rounds, kinds) }
  }
  const closed = { first, last: endsClosed(rounds, ratio) }
  return { kind: 'tube', closed, pickedUp: isPickedUp(rounds, rows) }
}

/**
 * A piece worked in rounds, flat or not, for every size; `size` is the one that tells what it is. Null for sizes without
 * rounds.
 */
export function roundPlans(
  rows: PerSize<readonly FlatRow[]>,
  size: number,
  kinds: readonly PlaceKind[],
  density: Density,
): PerSize<Plan | null> {
  const bySize = rows.map((own) => roundsOf(own, kinds))
  const what = kindOf(bySize[size] ?? [], rows[size] ?? [], kinds, density)
  return bySize.map((rounds) => {
    if (rounds.length === 0) return null
    return what.kind === 'motif' ? motifPlan(rounds.length, what.corners, density) : tubePlan(rounds, what, density)
  })
}
