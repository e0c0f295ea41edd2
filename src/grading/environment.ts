import type { BodyFound, Environment, GaugeFound, RepeatFound, Skein, Solver } from '../formula/index.ts'
import type { BodyColumns } from './body.ts'
import { bodyMeasure } from './body.ts'
import { easeOf } from './ease.ts'
import type { Repeat } from './gauge/repeat.ts'
import type { Swatch } from './gauge/swatches.ts'
import { shape } from './shaping/shape.ts'

/** What a draft's formulas can look up. */
export interface Facts {
  readonly sizes: readonly string[]
  /** The first is the default. */
  readonly swatches: readonly Swatch[]
  /** Stitch multiples with measures of their own; left out for none. */
  readonly repeats?: readonly Repeat[]
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
    repeat: (name) => findRepeat(facts.repeats ?? [], name),
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

function findRepeat(repeats: readonly Repeat[], name: string): RepeatFound {
  const repeat = repeats.find((other) => other.name === name)
  if (repeat === undefined) return { kind: 'unknown', known: repeats.map((other) => other.name) }
  if (repeat.gauge === null) return { kind: 'broken' }
  return { kind: 'found', across: repeat.across, up: repeat.up, unit: repeat.gauge.unit }
}

/** Body measures are printed first in the unit of the swatch, as the designer measures. */
function findBody(body: Facts['body'], measure: string, unit: 'cm' | 'in'): BodyFound {
  if (body === null) return { kind: 'no-table' }
  return body === 'broken' ? { kind: 'broken' } : bodyMeasure(body, measure, unit)
}
