import type { BodyFound, Environment, Gauge, GaugeFound, Skein, Solver } from '../formula/index.ts'
import type { BodyColumns } from './body.ts'
import { bodyMeasure } from './body.ts'
import { easeOf } from './ease.ts'
import { shape } from './shaping/shape.ts'

/** A swatch of the draft; `gauge` null when it could not be read, which has been reported. */
export interface Swatch {
  /** Null for the only swatch of a draft. */
  readonly name: string | null
  readonly gauge: Gauge | null
}

/** What a draft's formulas can look up. */
export interface Facts {
  readonly sizes: readonly string[]
  /** The first is the default. */
  readonly swatches: readonly Swatch[]
  /** Null without `fits`; `broken` when it could not be read, which has been reported. */
  readonly body: BodyColumns | null | 'broken'
  readonly skein: Skein | null
  /** Chooses linked counts; a draft without any needs none. */
  readonly solver?: Solver | null
}

/** Turns a draft's facts into what its formulas see. Add `made` once the rows have been worked. */
export function createEnvironment(facts: Facts): Environment {
  const unit = facts.swatches.find(({ gauge }) => gauge !== null)?.gauge?.unit ?? 'in'
  return {
    sizes: facts.sizes,
    swatches: facts.swatches.flatMap(({ name }) => (name === null ? [] : [name])),
    gauge: (name) => findGauge(facts.swatches, name),
    body: (measure) => findBody(facts.body, measure, unit),
    ease: (fit) => easeOf(fit, unit),
    skein: facts.skein,
    solver: facts.solver ?? null,
    shape,
  }
}

function findGauge(swatches: readonly Swatch[], name: string | null): GaugeFound {
  const swatch = name === null ? swatches[0] : swatches.find((other) => other.name === name)
  if (swatch === undefined) return { kind: 'unknown' }
  return swatch.gauge === null ? { kind: 'broken' } : { kind: 'found', gauge: swatch.gauge }
}

/** Body measures are printed first in the unit of the swatch, as the designer measures. */
function findBody(body: Facts['body'], measure: string, unit: 'cm' | 'in'): BodyFound {
  if (body === null) return { kind: 'no-table' }
  return body === 'broken' ? { kind: 'broken' } : bodyMeasure(body, measure, unit)
}
