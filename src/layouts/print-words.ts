import { getEntry } from 'astro:content'
import type { Pattern } from '../pattern/pattern.ts'
import type { PrintOptions } from '../print/index.ts'
import { wholeAddress } from './address.ts'

/** What every print-out of a pattern says beside the pattern, by the studio's settings. */
export async function printWords({ slug }: Pick<Pattern, 'slug'>) {
  const entry = await getEntry('studio', 'studio')
  const { name, address, print } = entry?.data ?? { name: '', address: null, print: undefined }
  const place = wholeAddress(`patterns/${slug}/`)
  return {
    studio: { name, address },
    page: place === null ? null : { address: place, code: print?.qr ?? true },
    numbers: print?.numbers ?? 'columns',
  } as const satisfies Partial<PrintOptions>
}
