import { entry } from '../../entry.ts'
import { offer } from './wording.ts'

/** Findings about the sizes of a value. */
export const sizesFindings = {
  'list-length': entry<{ given: number; sizes: readonly string[] }>({
    severity: 'error',
    says: ({ given, sizes }) =>
      `This list has ${given === 1 ? '1 value' : `${given} values`}, and the draft has ${sizes.length === 1 ? '1 size' : `${sizes.length} sizes`}.`,
    hint: ({ sizes }) =>
      `Give one value for each of ${sizes.join(', ')}; \`none\` for a size to which it does not apply.`,
  }),
  'list-in-list': entry<{ item: string }>({
    severity: 'error',
    says: ({ item }) => `\`${item}\` has a value for every size, and here only one size's is wanted.`,
    hint: ({ item }) => `Pick one size's value with \`at("…", ${item})\`, or write the formula without the list.`,
  }),
  'size-unknown': entry<{ size: string; nearest: string | null; sizes: readonly string[] }>({
    severity: 'error',
    says: ({ size }) => `The draft has no size \`${size}\`.`,
    hint: ({ nearest, sizes }) => offer(nearest) ?? `Its sizes are ${sizes.join(', ')}.`,
  }),
  'size-twice': entry<{ size: string }>({
    severity: 'error',
    says: ({ size }) => `The size \`${size}\` stands twice in this list.`,
    hint: () => 'Give each size once.',
  }),
  'sizes-missing': entry<{ names: string }>({
    severity: 'error',
    says: ({ names }) => `This list has no value for ${names}.`,
    hint: () => 'Add it, or write `none` for a size to which it does not apply.',
  }),
} as const
