import { entry, type Severity } from '../entry.ts'

/** `things` are what the piece carries, `buttons and pompoms`; empty where the finding is about the piece itself. */
export interface Carried {
  readonly things: string
}

function caution(severity: Severity, says: (things: string) => string, instead: string) {
  return entry<Carried>({
    severity,
    says: ({ things }) => says(things),
    hint: () => `${instead} Page and print-out carry a caution; the rules of the place of use or sale come first.`,
  })
}

/** Findings about what may hurt a child. They bind nobody: cautions are printed by themselves. */
export const safetyFindings = {
  'child-neck-cord': caution(
    'warning',
    (things) => `This piece for a child has ${things} at the neck or hood, which can catch and tighten.`,
    'Close it with a button, a snap or a snug edge, or leave them out for these sizes.',
  ),
  'child-hat-ties': caution(
    'note',
    (things) => `This hat for a child has ${things} under the chin, which can catch and tighten.`,
    'Keep them short, close it with a snap, or leave them out for these sizes.',
  ),
  'child-waist-cord': caution(
    'note',
    (things) => `This piece for a child has ${things} at the waist or hem, which can catch.`,
    'Keep the ends short and plain, and have the middle sewn down.',
  ),
  'child-cord': caution(
    'note',
    (things) => `This piece for a child has ${things}, which can catch and tighten.`,
    'Keep them short, and have them sewn down.',
  ),
  'child-small-parts': caution(
    'note',
    (things) => `This piece for a child under three has ${things}, which can come off and be swallowed.`,
    'Embroider instead, or leave them out for these sizes.',
  ),
  'toy-small-parts': caution(
    'note',
    (things) => `This toy has ${things}, which can come off and be swallowed by a child under three.`,
    'Offer embroidered features instead.',
  ),
  'child-fringe': caution(
    'note',
    (things) => `This piece for a small child has ${things}, which can catch, wind around fingers or be pulled off.`,
    'Keep it short and well knotted, or leave it out for these sizes.',
  ),
  'baby-cover': caution(
    'note',
    () => 'This is a cover for a baby under one year, and nothing loose belongs where a baby sleeps.',
    'Say that it is for the time awake.',
  ),
  'baby-hat': caution(
    'note',
    () => 'This is a hat for a baby under one year, which should come off indoors and for sleep.',
    'Say when it is worn.',
  ),
  'child-nightwear': caution(
    'note',
    () => 'This is nightwear for a child, which must resist fire in many countries.',
    'Call it by another name, or make sure that it meets the rules.',
  ),
} as const
