import type { Draft } from '../draft.ts'
import type { SwatchFacts } from '../facts.ts'
import type { Changes, OwnGauge } from './changes.ts'

/** The draft with a reader's gauges in place of those of its swatches. */
export function withOwnGauges(draft: Draft, { gauges }: Changes): Draft {
  const { facts } = draft.facts
  const swatch = Object.fromEntries(
    Object.entries(facts.swatch).map(([name, written]) => [name, withOwnGauge(written, gauges[name])]),
  )
  return { ...draft, facts: { ...draft.facts, facts: { ...facts, swatch } } }
}

function withOwnGauge(written: SwatchFacts, own: OwnGauge | undefined): SwatchFacts {
  if (own === undefined) return written
  return {
    ...written,
    ...ownRate('stitches', written.stitches, own.stitches),
    ...ownRate('rows', written.rows, own.rows),
  }
}

function ownRate(
  what: 'stitches' | 'rows',
  written: string | readonly string[] | undefined,
  count: string | null,
): Pick<SwatchFacts, 'stitches' | 'rows'> {
  const over = overOf(written)
  return count === null || over === null ? {} : { [what]: `${count} per ${over}` }
}

/** The length that stitches or rows were counted over, `10 cm`: of several measurements, that of the first. */
export function overOf(written: string | readonly string[] | undefined): string | null {
  const first = typeof written === 'string' ? written : written?.[0]
  return first?.split(/\s+(?:per|to|over|in|=)\s+/)[1]?.trim() ?? null
}
