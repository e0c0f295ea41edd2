import { createHash } from 'node:crypto'
import { patternAddress } from '../layouts/address.ts'
import type { Pattern } from '../pattern/pattern.ts'

/** Tells a page of this pattern from one of another edition, or of the same edition with something mended in it. */
export function patternVersion(pattern: Pattern): { folder: string; edition: string | null; version: string } {
  // Where a row stands in its draft is nothing that a reader sees.
  const shown = JSON.stringify(pattern, (_, value: unknown) => (isPlace(value) ? undefined : value))
  const version = createHash('sha256').update(shown).digest('hex').slice(0, 16)
  return { folder: patternAddress(pattern.slug), edition: pattern.edition, version }
}

function isPlace(value: unknown): boolean {
  return typeof value === 'object' && value !== null && 'start' in value && 'end' in value
}
