import type { Diagnostic, Source } from '../../diagnostic/index.ts'
import { placeOf } from '../../diagnostic/index.ts'
import { wrapped } from './lines.ts'

/** What the designer lets stand, and why; empty where nothing is accepted. */
export function acceptedText(source: Source, diagnostics: readonly Diagnostic[]): string {
  const lines = diagnostics.flatMap(({ code, at, accepted }) =>
    accepted === undefined ? [] : [wrapped(`${code}, line ${placeOf(source, at.start).line}: ${accepted}`, 2, 2)],
  )
  return lines.length === 0 ? '' : ['Accepted', ...lines].join('\n')
}
