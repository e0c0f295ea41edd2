import type { Diagnostic } from '../diagnostic/index.ts'
import { diagnose, nearestTo } from '../diagnostic/index.ts'
import { readQuantity, units } from '../measure/index.ts'
import type { Draft } from './draft.ts'
import type { SwatchFacts } from './facts.ts'
import type { Graded } from './grade.ts'
import { usualKind } from './kinds.ts'
import { adjustmentFindings } from './own/findings.ts'

/** What the front matter's schema can't see: measures that are none, and names that are known only from the rest of the draft. */
export function* checkFacts(draft: Draft, graded: Graded): Generator<Diagnostic> {
  yield* kindFindings(draft)
  yield* skeinFindings(draft)
  yield* swatchFindings(draft)
  yield* sampleFindings(draft)
  yield* adjustmentFindings(draft, graded)
}

function* kindFindings(draft: Draft): Generator<Diagnostic> {
  for (const [index, kind] of draft.facts.facts.kind.entries()) {
    const usual = usualKind(kind)
    if (usual !== null) yield diagnose('kind-unusual', draft.facts.locate('kind', index), { kind, usual })
  }
}

type Path = readonly (string | number)[]

function* measureFinding(
  draft: Draft,
  text: string | undefined,
  kind: 'length' | 'mass',
  path: Path,
): Generator<Diagnostic> {
  const quantity = text === undefined ? null : readQuantity(text)
  if (text === undefined || (quantity !== null && units[quantity.unit].kind === kind && quantity.base.s > 0n)) return
  yield diagnose('measure-unreadable', draft.facts.locate(...path), { key: String(path.at(-1)), text, kind })
}

function* skeinFindings(draft: Draft): Generator<Diagnostic> {
  for (const [index, { skein }] of draft.facts.facts.yarn.entries()) {
    yield* measureFinding(draft, skein?.weight, 'mass', ['yarn', index, 'skein', 'weight'])
    yield* measureFinding(draft, skein?.length, 'length', ['yarn', index, 'skein', 'length'])
  }
}

function* swatchFindings(draft: Draft): Generator<Diagnostic> {
  const { swatch: swatches, sample } = draft.facts.facts
  for (const [name, swatch] of Object.entries(swatches)) {
    const { size, weight } = swatch
    const path = name === '' ? ['swatch'] : ['swatch', name]
    yield* measureFinding(draft, weight, 'mass', [...path, 'weight'])
    if (size !== undefined && swatchSides(size) === null) {
      yield diagnose('swatch-size-unreadable', draft.facts.locate(...path, 'size'), { text: size })
    }
    const missing = weight === undefined || sample.length > 0 ? null : missingFor(swatch)
    if (missing !== null) yield diagnose('swatch-weight-alone', draft.facts.locate(...path, 'weight'), { missing })
  }
}

/** What a weighed swatch lacks to tell how much yarn is in its stitches. */
function missingFor({ size, stitches, rows, repeats }: SwatchFacts): 'size' | 'gauge' | null {
  if (size === undefined) return 'size'
  return repeats === undefined && (stitches === undefined || rows === undefined) ? 'gauge' : null
}

/** `12 cm x 15 cm`, `12 x 15 cm`: width and height in centimetres; null where it is not two lengths. */
export function swatchSides(text: string): readonly [width: number, height: number] | null {
  const sides = text.split(/\s*(?:x|×|by)\s*/i)
  const unit = /[a-z]+$/.exec(text)?.[0] ?? ''
  const [width, height] = sides.map((side) => readQuantity(side) ?? readQuantity(`${side} ${unit}`))
  if (!width || !height || sides.length !== 2 || units[width.unit].kind !== 'length') return null
  return units[height.unit].kind === 'length' ? [width.base.valueOf(), height.base.valueOf()] : null
}

function* sampleFindings(draft: Draft): Generator<Diagnostic> {
  const { sample, sizes, yarn } = draft.facts.facts
  const names = yarn.map(({ as }) => as)
  for (const [index, { size, used }] of sample.entries()) {
    if (!sizes.includes(size)) {
      const details = { size, nearest: nearestTo(size, sizes), sizes }
      yield diagnose('size-unknown', draft.facts.locate('sample', index, 'size'), details)
    }
    for (const [name, text] of Object.entries(used)) {
      const path = ['sample', index, 'used', name]
      if (!names.includes(name))
        yield diagnose('yarn-unknown', draft.facts.locate(...path), { name, nearest: nearestTo(name, names) })
      yield* measureFinding(draft, text, 'mass', path)
    }
  }
}
