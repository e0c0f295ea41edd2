import type { Form, PrintOptions } from '../print/index.ts'

/** One of the files that a pattern is printed from. */
export interface PrintOut {
  readonly form: Form
  readonly paper: PrintOptions['paper']
}

/** What a form is called where it is offered. */
export const formNames: Readonly<Record<Form, string>> = {
  usual: 'Print-out (PDF)',
  large: 'Large print',
  counts: 'Count sheet',
}

const forms = ['usual', 'large', 'counts'] as const

/** What a size of paper is called. */
export const papers = { a4: 'A4', letter: 'Letter' } as const

/** Every print-out of a pattern, in the order in which they are offered. */
export const printOuts: readonly PrintOut[] = forms.flatMap((form) => [
  { form, paper: 'a4' },
  { form, paper: 'letter' },
])

/** Name of its file without the ending: `tide-line-a4`, `tide-line-large-letter`. */
export function printFile(slug: string, { form, paper }: PrintOut): string {
  return [slug, ...(form === 'usual' ? [] : [form]), paper].join('-')
}
