import type { Pattern } from '../pattern/pattern.ts'
import type { Choice, Form, PrintOptions } from '../print/index.ts'

/** One of the files that a pattern is printed from. */
export interface PrintOut {
  readonly form: Form
  readonly paper: PrintOptions['paper']
  readonly terms: Choice['terms']
}

/** What a form is called where it is offered. */
const formNames: Readonly<Record<Form, string>> = {
  usual: 'Print-out (PDF)',
  large: 'Large print',
  counts: 'Count sheet',
}

const forms = ['usual', 'large', 'counts'] as const

/** What a size of paper is called. */
export const papers = { a4: 'A4', letter: 'Letter' } as const

const otherTerms = { us: 'uk', uk: 'us' } as const

/** Print-outs that differ in their paper alone, under one name. */
export interface Offered {
  readonly name: string
  readonly printOuts: readonly PrintOut[]
}

/** Every print-out of a pattern, as they are offered; `terms` are the studio's setting. */
export function offeredPrintOuts({ terms: own }: Pick<Pattern, 'terms'>, terms: 'own' | 'both'): readonly Offered[] {
  const each = terms === 'both' ? (['own', 'other'] as const) : (['own'] as const)
  return forms.flatMap((form) =>
    each.map((terms) => ({
      name: `${formNames[form]}${terms === 'own' ? '' : `, ${otherTerms[own].toUpperCase()} terms`}`,
      printOuts: (['a4', 'letter'] as const).map((paper) => ({ form, paper, terms })),
    })),
  )
}

/** Name of its file without the ending: `tide-line-a4`, `tide-line-large-uk-letter`. */
export function printFile({ slug, terms: own }: Pick<Pattern, 'slug' | 'terms'>, printOut: PrintOut): string {
  const { form, paper, terms } = printOut
  return [slug, ...(form === 'usual' ? [] : [form]), ...(terms === 'own' ? [] : [otherTerms[own]]), paper].join('-')
}
