import { entry } from '../entry.ts'

/** What a measure of one size comes to, in words with units. */
interface OffCase {
  readonly size: string
  readonly made: string
  readonly target: string
  /** `2 cm less` */
  readonly off: string
}

/** A count of one size before and after it is rounded, and the lengths of both. */
interface RoundedCase {
  readonly size: string
  readonly from: string
  readonly to: string
  readonly was: string
  readonly is: string
}

const allowed =
  'Where nothing is said, a tenth is allowed, or 1 cm where that is more; `tolerance: 2 cm` or `tolerance: 3 %` at the top of the draft says otherwise.'

/** Findings about measures: what they come to beside what they were to be. */
export const fitFindings = {
  'tolerance-unfit': entry<Record<never, never>>({
    severity: 'error',
    says: () => 'The tolerance says how far a measure may be off, so it must be a length or a percentage.',
    hint: () => 'Write `tolerance: 1 cm` or `tolerance: 5 %`.',
  }),
  'measure-off-target': entry<{ label: string; cases: readonly OffCase[] }>({
    severity: 'warning',
    says: ({ label, cases }) =>
      `“${label}” does not come to what it was to be: ${cases
        .map(({ size, made, target, off }) => `${size} ${made} instead of ${target}, ${off}`)
        .join('; ')}.`,
    hint: () =>
      `Choose a measure that the stitch multiple can meet, or another multiple, or round \`up\` or \`down\`. ${allowed}`,
  }),
  'rounding-moves-measure': entry<{
    name: string
    formula: string
    across: 'width' | 'height'
    cases: readonly RoundedCase[]
  }>({
    severity: 'note',
    says: ({ name, formula, across, cases }) =>
      `Rounding \`${name} = ${formula}\` moves the ${across}: ${cases
        .map(({ size, from, to, was, is }) => `${size} from ${was} (${from}) to ${is} (${to})`)
        .join('; ')}.`,
    hint: () => `Round to a smaller multiple, or choose a length that it can meet. ${allowed}`,
  }),
} as const
