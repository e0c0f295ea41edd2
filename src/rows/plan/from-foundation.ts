import type { Accepts, Step, Target, Where } from '../step.ts'

function onStitches(of: Target): Target {
  return of.map((accepts): Accepts => (accepts.kind === 'chain' ? { kind: 'stitch', said: true } : accepts))
}

function whereOnStitches(where: Where): Where {
  if (where.kind === 'fromHook')
    return { kind: 'first', count: where.nth.map(() => 1), of: [{ kind: 'stitch', said: true }] }
  return 'of' in where ? { ...where, of: onStitches(where.of) } : where
}

/** Whether a row is worked into the chain that the piece is begun on. */
export function isOnFoundation(steps: readonly Step[]): boolean {
  return steps.some((step) => 'where' in step && step.where.kind === 'fromHook' && step.kind !== 'slip')
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
