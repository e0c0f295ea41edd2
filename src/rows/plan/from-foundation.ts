import type { Count } from '../count.ts'
import type { Accepts, Step, Target, Where } from '../step.ts'

function onStitches(of: Target): Target {
  return of.map((accepts): Accepts => (accepts.kind === 'chain' ? { kind: 'stitch', said: true } : accepts))
}

function whereOnStitches(where: Where): Where {
  if (where.kind === 'fromHook')
    return { kind: 'first', count: where.nth.map(() => 1), of: [{ kind: 'stitch', said: true }] }
  return 'of' in where ? { ...where, of: onStitches(where.of) } : where
}

/** `ch 6, dc in 4th ch from hook`: a few chains of the row's own, that begin a block of stitches. */
function isOwnChain(step: Step | undefined, nth: Count): boolean {
  if (step?.kind !== 'chain') return false
  return step.count.every((chains, size) => chains === null || chains <= 2 * (nth[size] ?? 0))
}

/** Whether a row is worked into the chain that the piece is begun on. */
export function isOnFoundation(steps: readonly Step[]): boolean {
  return steps.some((step, at) => {
    if (!('where' in step) || step.where.kind !== 'fromHook' || step.kind === 'slip') return false
    const before = steps.slice(0, at).findLast((each) => each.kind !== 'turn' && each.kind !== 'remark')
    return !isOwnChain(before, step.where.nth)
  })
}

/** The steps of a row that is worked into a chain, as they are worked into the stitches of a row. */
export function asOnStitches(steps: readonly Step[]): readonly Step[] {
  return steps.map((step): Step => {
    switch (step.kind) {
      case 'work':
      case 'together':
      case 'skip':
        return { ...step, where: whereOnStitches(step.where) }
      case 'repeat':
      case 'repeatAll':
      case 'sequence':
        return { ...step, body: asOnStitches(step.body) }
      default:
        return step
    }
  })
}
