import type { Pattern } from '../pattern/pattern.ts'
import { deflate } from './deflate.ts'
import { loadFonts } from './fonts.ts'
import type { Printed, PrintOptions } from './index.ts'
import { renderPdf } from './index.ts'

/** One print-out to be made; every thread reads the typefaces for itself. */
export interface PrintJob {
  readonly pattern: Pattern
  readonly options: Omit<PrintOptions, 'fonts' | 'deflate'>
}

/** What a thread of the pool does. */
export default function print({ pattern, options }: PrintJob): Promise<Printed> {
  return renderPdf(pattern, { ...options, fonts: loadFonts(), deflate })
}
