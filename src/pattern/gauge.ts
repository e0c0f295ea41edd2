import Fraction from 'fraction.js'
import type { Environment } from '../formula/index.ts'
import {
  always,
  fromBase,
  inSystem,
  printDecimal,
  printMeasure,
  printMixed,
  readQuantity,
  roundToStep,
  type Segment,
  textForAll,
} from '../measure/index.ts'
import type { Facts, SwatchFacts } from './facts.ts'
import { between, hookText } from './materials.ts'
import type { GaugeLine } from './pattern.ts'

type Words = readonly Segment[]

/**
 * `12 stitches and 8 rows = 10 cm (4 in) in single crochet with a 6.5 mm (US K-10½) hook`, a line a swatch, with what it
 * was before blocking and what a repeat measures where the draft says so.
 */
export function gaugeLines({ swatch }: Facts, environment: Environment): GaugeLine[] {
  return Object.entries(swatch).flatMap(([key, written]) => {
    const name = key === '' ? null : key
    const said = [gaugeText(written, name, environment), plain(within(written)), plain(withHook(written))]
    const first = between(said.filter(isSaid), ' ')
    const parts = [first, ...beforeBlocking(written, name, environment), ...repeats(written, environment)]
    const text = between(parts.filter(isSaid), '; ')
    return isSaid(text) ? [{ name, text }] : []
  })
}

const plain = (text: string): Words => (text === '' ? [] : [always(text)])

const isSaid = (words: Words): boolean => words.length > 0

type Counted = Pick<SwatchFacts, 'stitches' | 'rows'>

/** `12 stitches and 8 rows = 10 cm (4 in)`; `gauge` is the name by which formulas reach the same swatch. */
export function gaugeText({ stitches, rows }: Counted, gauge: string | null, environment: Environment): Words {
  const across = stitches === undefined ? null : rate(stitches, 'stitches', gauge, environment)
  const up = rows === undefined ? null : rate(rows, 'rows', gauge, environment)
  if (across !== null && up !== null && textForAll(across.over) === textForAll(up.over))
    return [always(`${across.count} and ${up.count} = `), ...across.over]
  const each = [across, up].flatMap((part) => (part === null ? [] : [[always(`${part.count} = `), ...part.over]]))
  return between(each, ', ')
}

interface Rate {
  readonly count: string
  readonly over: Words
}

/** `12 per 10 cm` as its two halves, the length in both systems; of several measurements, their mean over the first length. */
function rate(
  written: string | readonly string[],
  what: 'stitches' | 'rows',
  gauge: string | null,
  environment: Environment,
): Rate | null {
  const [first = '', ...others] = typeof written === 'string' ? [written] : written
  const [count = '', over = ''] = first.split(/\s+(?:per|to|over|in|=)\s+/)
  if (others.length === 0) return { count: `${count.replace(/\s*[a-z]+$/i, '')} ${what}`, over: asMeasured(over) }
  const found = environment.gauge(gauge)
  const mean = found.kind === 'found' ? found.gauge[what] : null
  const length = readQuantity(over)?.base
  if (mean === null || length === undefined) return null
  const words = `${printDecimal(mean.mul(length), 1)} ${what} (mean of ${others.length + 1} measurements)`
  return { count: words, over: asMeasured(over) }
}

/** A length as it was measured, with the other system: `10 cm (4 in)`, `4.2 cm (1⅝ in)`. */
export function asMeasured(text: string): Words {
  const quantity = readQuantity(text)
  if (quantity === null) return plain(text)
  const imperial = quantity.unit === 'in' || quantity.unit === 'yd'
  const value = { kind: 'length', unit: quantity.unit, bySize: [quantity.base] } as const
  const own = text.trim().replace(/([^\sa-z])\s*([a-z]+)$/, '$1 $2')
  const other = textForAll(printMeasure(value, { kind: 'unit', unit: imperial ? 'cm' : 'in', step: null }))
  return imperial ? systems('imperial', own, other) : systems('metric', own, other)
}

/** A measure with the same in the other system behind it, in brackets. */
function systems(first: 'metric' | 'imperial', own: string, other: string): Words {
  const second = first === 'metric' ? 'imperial' : 'metric'
  return [
    ...inSystem(first, [always(own)]),
    ...inSystem('both', [always(' (')]),
    ...inSystem(second, [always(other)]),
    ...inSystem('both', [always(')')]),
  ]
}

function within(swatch: SwatchFacts): string {
  return swatch.in === undefined ? '' : `in ${swatch.in}`
}

function withHook({ hook, unblocked }: SwatchFacts): string {
  const blocked = unblocked === undefined ? '' : 'after blocking'
  const hooked = hook === undefined ? '' : `with a ${hookText(hook)} hook`
  return [hooked, blocked].filter((part) => part !== '').join(', ')
}

function beforeBlocking({ unblocked }: SwatchFacts, name: string | null, environment: Environment): Words[] {
  if (unblocked === undefined) return []
  const text = gaugeText(unblocked, name === null ? 'unblocked' : `${name} unblocked`, environment)
  return isSaid(text) ? [[always('before blocking '), ...text]] : []
}

/** `1 shell = 6 stitches, 4.2 cm (1⅝ in) wide` */
function repeats(swatch: SwatchFacts, environment: Environment): Words[] {
  return Object.entries(swatch.repeats ?? {}).flatMap(([name, { stitches, rows }]) => {
    const found = environment.repeat(name)
    if (found.kind !== 'found') return []
    const wide = found.across === null ? [] : [[...measured(found.across, found.unit), always(' wide')]]
    const high = found.up === null ? [] : [[...measured(found.up, found.unit), always(' high')]]
    const counts = [counting(stitches, 'stitch', 'stitches'), counting(rows, 'row', 'rows')].flat().map(plain)
    return [[always(`1 ${name} = `), ...between([...counts, ...wide, ...high], ', ')]]
  })
}

function counting(count: number | undefined, one: string, several: string): string[] {
  return count === undefined ? [] : [`${count} ${count === 1 ? one : several}`]
}

const eighth = new Fraction(1, 8)

/** What one takes of which so many lie in a centimetre. */
function measured(perCentimetre: Fraction, unit: 'cm' | 'in'): Words {
  const base = perCentimetre.inverse()
  const inches = `${printMixed(roundToStep(fromBase(base, 'in'), eighth))} in`
  return unit === 'cm'
    ? systems('metric', `${printDecimal(base, 2)} cm`, inches)
    : systems('imperial', inches, `${printDecimal(base, 1)} cm`)
}
