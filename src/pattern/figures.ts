import type { Diagnostic } from '../diagnostic/index.ts'
import type { Figure } from '../drawing/drawing.ts'
import { chartFor } from './chart.ts'
import { type Draft, textAt } from './draft.ts'
import type { DrawingRequest } from './drawing-request.ts'
import { readRequest } from './drawings.ts'
import { type DrawingSource, schematicFor } from './schematic.ts'

/** What is drawn from, and where findings go. */
export interface FigureSource extends Omit<DrawingSource, 'sizes'> {
  readonly draft: Draft
  readonly findings: Diagnostic[]
}

/** Draws what the draft asks for, and puts down what can't be drawn. */
export type DrawFigure = (request: DrawingRequest, source: FigureSource) => Figure | null

export const drawFigure: DrawFigure = (request, { draft, findings, ...from }) => {
  const asked = readRequest(draft, from.ledger, request, findings)
  if (asked === null) return null
  const { sizes, terms } = draft.facts.facts
  const source = { ...from, sizes }
  const { value, diagnostics } =
    asked.drawing === 'schematic'
      ? schematicFor(asked, source)
      : chartFor(asked, { ...source, terms, textAt: (at) => textAt(draft, at) })
  findings.push(...diagnostics)
  return value
}
