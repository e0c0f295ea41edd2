import { entry } from '../entry.ts'

/** What a measure of one size comes to, in words with units. */
export interface OffCase {
  readonly size: string
  readonly made: string
  readonly target: string
  /** `2 cm less` */
  readonly off: string
}

/** A count of one size before and after it is rounded, and the lengths of both. */
export interface RoundedCase {
  readonly size: string
  readonly from: string
  readonly to: string
  readonly was: string
  readonly is: string
}

const allowed =
  'Where nothing is said, a tenth is allowed, or 1 cm where that is more; `tolerance: 2 cm` or `tolerance: 3 %` at the top of the draft says otherwise.'

/** A closed edge of one size beside the head, in words with units. */
export interface HeadCase {
  readonly size: string
  readonly edge: string
  readonly stretched: string
  readonly head: string
  /** The least edge that passes. */
  readonly least: string
}

/** Two sizes, the smaller first. */
type Two<T> = readonly [T, T]

function standOut(names: readonly string[]): string {
  const last = names.at(-1)
  if (last === undefined) return ''
  return names.length === 1 ? ` ${last} stands out.` : ` ${names.slice(0, -1).join(', ')} and ${last} stand out.`
}

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
  'claim-unfit': entry<{ label: string; part: 'claims' | 'over' }>({
    severity: 'error',
    says: ({ label, part }) =>
      part === 'claims'
        ? `What “${label}” claims is not a length.`
        : `What “${label}” lies over is not a number of stitches or rows.`,
    hint: ({ part }) =>
      part === 'claims'
        ? 'Write lengths, one a size: `claims: "[48, 58, 63] cm"`.'
        : 'Write the count, or a formula for it: `over: neck_sts`, `over: "[60, 72, 78]"`.',
  }),
  'claims-uneven': entry<{
    label: string
    what: 'stitches' | 'rows'
    /** `S 66 over 21 in, 12.6 in 4 in` */
    said: readonly string[]
    /** The sizes that stand out; none where none does more than another. */
    odd: readonly string[]
    /** What these come to by the others: `S 22⅞ in` */
    instead: readonly string[]
  }>({
    severity: 'warning',
    says: ({ label, what, said, odd }) =>
      `“${label}” implies different gauges in ${what} of one fabric: ${said.join('; ')}.${standOut(odd)}`,
    hint: ({ instead }) =>
      instead.length === 0
        ? 'Measure again, or count again: one fabric has one gauge.'
        : `Measure or count again: by the gauge of the others it is ${instead.join('; ')}.`,
  }),
  'claims-unlike-swatch': entry<{
    label: string
    what: 'stitches' | 'rows'
    claimed: string
    swatch: string
    made: readonly string[]
  }>({
    severity: 'warning',
    says: ({ label, what, claimed, swatch }) =>
      `“${label}” implies a gauge of ${claimed}, counted in ${what}, and the swatch has ${swatch}.`,
    hint: ({ made }) =>
      `By the swatch it is ${made.join('; ')}. A fabric of its own, such as ribbing, needs a swatch of its own.`,
  }),
  'too-narrow-for-head': entry<{ label: string; stretch: number; cases: readonly HeadCase[] }>({
    severity: 'warning',
    says: ({ label, stretch, cases }) =>
      `“${label}” does not pass over the head: ${cases
        .map(
          ({ size, edge, stretched, head }) =>
            `${size} is ${edge}, stretched by ${stretch} % ${stretched}, for a head of ${head}`,
        )
        .join('; ')}.`,
    hint: ({ cases }) =>
      `Make it at least ${cases.map(({ size, least }) => `${least} for ${size}`).join(', ')}, or give it an opening. Where the fabric stretches more or less than a fifth, say how far: \`stretch: 30 %\`.`,
  }),
  'measure-falls': entry<{ label: string; names: Two<string>; amounts: Two<string> }>({
    severity: 'warning',
    says: ({ label, names: [smaller, larger], amounts: [from, to] }) =>
      `“${label}” is less in ${larger} than in ${smaller}: ${to} after ${from}.`,
    hint: () => 'Sizes are listed smallest first. Look for the number that does not rise with them.',
  }),
  'measure-same': entry<{ label: string; names: Two<string>; amount: string }>({
    severity: 'warning',
    says: ({ label, names: [smaller, larger], amount }) =>
      `“${label}” is the same in ${smaller} and ${larger}, whose bodies differ: ${amount}.`,
    hint: () => 'Round to a smaller multiple, give one of them another ease, or make one size of the two.',
  }),
  'foundation-falls': entry<{ row: string; piece: string; names: Two<string>; amounts: Two<number> }>({
    severity: 'warning',
    says: ({ row, piece, names: [smaller, larger], amounts: [from, to] }) =>
      `${row}${piece === '' ? '' : ` of ${piece}`} has fewer stitches in ${larger} than in ${smaller}: ${to} after ${from}.`,
    hint: () => 'Sizes are listed smallest first. Look for the number that does not rise with them.',
  }),
  'list-falls': entry<{ name: string; names: Two<string>; amounts: Two<string> }>({
    severity: 'note',
    says: ({ name, names: [smaller, larger], amounts: [from, to] }) =>
      `\`${name}\` rises with size but for ${larger}, which has ${to} after ${from} for ${smaller}.`,
    hint: () => 'Check the list for a slip.',
  }),
} as const
