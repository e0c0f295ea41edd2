import type { Diagnostic, Outcome } from '../diagnostic/index.ts'
import { type Environment, readGrading, type Settled, type Skein, type Solver, settle } from '../formula/index.ts'
import {
  type BodyColumns,
  createEnvironment,
  type ReadBeside,
  readFits,
  readSwatches,
  type WrittenGauge,
  type WrittenRepeat,
  type WrittenSwatch,
  type WrittenText,
} from '../grading/index.ts'
import { type Quantity, readQuantity, units } from '../measure/index.ts'
import { bodyNodes, type Draft, spanOf, textAt, walk } from './draft.ts'
import type { RepeatFacts, SwatchFacts } from './facts.ts'
import { withOwnLengths } from './own/lengths.ts'

/** What the formulas of a draft can see, and what its grading blocks come to. */
export interface Graded {
  readonly environment: Environment
  readonly settled: Settled
  readonly body: BodyColumns | null
}

/** What a draft may need from outside the core, each null where it was started without. */
export interface Reach {
  /** Chooses linked counts. */
  readonly solver: Solver | null
  /** Reads a body table that lies beside the draft. */
  readonly readBeside: ReadBeside | null
}

/** Reads the swatches, the body table and every grading block of a draft. Findings go to `findings`. */
export function gradeDraft(draft: Draft, { solver, readBeside }: Reach, findings: Diagnostic[]): Graded {
  const keep = <T>({ value, diagnostics }: Outcome<T>): T => {
    findings.push(...diagnostics)
    return value
  }
  const body = draft.facts.facts.fits === undefined ? undefined : keep(bodyOf(draft, readBeside))
  const environment = createEnvironment({
    sizes: draft.facts.facts.sizes,
    ...keep(readSwatches(swatchesOf(draft))),
    body: body === null ? 'broken' : (body ?? null),
    skein: skeinOf(draft),
    solver,
  })
  const written = blocks(draft).flatMap(({ text, origin }) => keep(readGrading(text, origin)))
  const statements = withOwnLengths(written, draft.own)
  return { environment, settled: keep(settle(statements, environment)), body: body ?? null }
}

/** The text of each grading block, fences left out, and where it starts in the draft. */
function blocks(draft: Draft): { text: string; origin: number }[] {
  const found: { text: string; origin: number }[] = []
  for (const node of walk(bodyNodes(draft))) {
    if (node.type !== 'code' || node.lang !== 'grading') continue
    const at = spanOf(draft, node)
    const lines = textAt(draft, at).split('\n')
    const origin = at.start + (lines[0]?.length ?? 0) + 1
    // A block that runs to the end of the file has no closing fence.
    const fenced = /^\s*(?:`{3,}|~{3,})\s*$/.test(lines.at(-1) ?? '')
    found.push({ text: lines.slice(1, fenced && lines.length > 1 ? -1 : undefined).join('\n'), origin })
  }
  return found
}

function written(draft: Draft, ...path: readonly (string | number)[]): WrittenText {
  const at = draft.facts.locate(...path)
  return { text: textAt(draft, at), at }
}

type Path = readonly (string | number)[]

function swatchesOf(draft: Draft): WrittenSwatch[] {
  return Object.entries(draft.facts.facts.swatch).map(([name, swatch]) => {
    const path = name === '' ? ['swatch'] : ['swatch', name]
    const { unblocked } = swatch
    return {
      name: name === '' ? null : name,
      ...gaugeLines(draft, swatch, path),
      unblocked: unblocked === undefined ? null : gaugeLines(draft, unblocked, [...path, 'unblocked']),
      repeats: Object.entries(swatch.repeats ?? {}).map(([repeat, lines]) =>
        writtenRepeat(draft, repeat, lines, [...path, 'repeats', repeat]),
      ),
    }
  })
}

function gaugeLines(
  draft: Draft,
  { stitches, rows }: Pick<SwatchFacts, 'stitches' | 'rows'>,
  path: Path,
): WrittenGauge {
  return {
    stitches: measurements(draft, stitches, [...path, 'stitches']),
    rows: measurements(draft, rows, [...path, 'rows']),
  }
}

function writtenRepeat(draft: Draft, name: string, lines: RepeatFacts, path: Path): WrittenRepeat {
  return {
    name,
    at: draft.facts.locate(...path),
    stitches: lines.stitches ?? null,
    width: measurements(draft, lines.width, [...path, 'width']),
    rows: lines.rows ?? null,
    height: measurements(draft, lines.height, [...path, 'height']),
  }
}

/** A line that gives one measurement or a list of them, each with its place; none where it is left out. */
function measurements(draft: Draft, given: string | readonly string[] | undefined, path: Path): WrittenText[] {
  if (given === undefined) return []
  if (typeof given === 'string') return [{ text: given, at: draft.facts.locate(...path) }]
  return given.map((text, index) => ({ text, at: draft.facts.locate(...path, index) }))
}

/** Without sizes of its own, `fits` means those of the draft; `none` is a size that is drawn on nobody. */
function bodyOf(draft: Draft, readBeside: ReadBeside | null): Outcome<BodyColumns | null> {
  const { sizes, fits } = draft.facts.facts
  const table = written(draft, 'fits', 'table')
  const named = fits?.sizes?.map((_, index) => written(draft, 'fits', 'sizes', index))
  const columns = named ?? sizes.map((size) => ({ text: size, at: table.at }))
  const drawn = columns.map((column) => (column.text === 'none' ? null : column))
  const at = draft.facts.locate('fits', 'sizes')
  return readFits({ table, columns: drawn, at }, sizes.length, readBeside ?? undefined)
}

/** The skein of the first yarn, for `as skeins`. */
function skeinOf(draft: Draft): Skein | null {
  const skein = draft.facts.facts.yarn[0]?.skein
  return skein === undefined ? null : { mass: base(skein.weight, 'mass'), length: base(skein.length, 'length') }
}

function base(text: string | undefined, kind: 'mass' | 'length'): Quantity['base'] | null {
  const quantity = text === undefined ? null : readQuantity(text)
  return quantity !== null && units[quantity.unit].kind === kind ? quantity.base : null
}
