import type { Changes, OwnGauge } from '../../pattern/own/changes.ts'
import type { Adjustable, AdjustableGauge, AdjustableLength } from '../../pattern/pattern.ts'
import { type OwnMeasure, readMeasure } from '../fit.ts'

/** What a reader has given, by the field that it was given in; a field that is left empty is not there. */
export type Given = ReadonlyMap<string, OwnMeasure | number>

/** One field for a length, one or two for a gauge. */
export type Field =
  | { readonly kind: 'length'; readonly key: string; readonly of: AdjustableLength }
  | {
      readonly kind: 'rate'
      readonly key: string
      readonly of: AdjustableGauge
      readonly what: 'stitches' | 'rows'
      readonly count: number
    }

export function fieldsOf(adjustables: readonly Adjustable[]): Field[] {
  return adjustables.flatMap((of): Field[] => {
    if (of.kind === 'length') return [{ kind: 'length', key: keyOf(of.name), of }]
    return (['stitches', 'rows'] as const).flatMap((what) => {
      const rate = of[what]
      return rate === null
        ? []
        : [{ kind: 'rate', key: `${keyOf(of.name, what)}`, of, what, count: rate.count } as const]
    })
  })
}

/** As it stands in an address: `my-body-length`, `my-stitches`. */
function keyOf(...words: readonly string[]): string {
  const own = words.map((word) =>
    word
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, ''),
  )
  return ['my', ...own.filter((word) => word !== '')].join('-')
}

/** What is wrong with a field: it says no number, or one that is out of the range. */
export type Refusal = 'unreadable' | 'outside'

const inCentimetres = { cm: 1, in: 2.54 } as const

/** Lengths are said to half a centimetre or a quarter of an inch. */
const steps = { cm: 0.5, in: 0.25 } as const

/** What is lost between centimetres and inches. */
const hair = 1e-6

export function inUnit(centimetres: number, unit: OwnMeasure['unit']): number {
  return centimetres / inCentimetres[unit]
}

/** The least and the most that a length may be, in a unit: rounded inwards, so that what is said can be given. */
export function lengthLimits(
  { of: { from, to } }: Extract<Field, { kind: 'length' }>,
  unit: OwnMeasure['unit'],
): readonly [least: number, most: number] {
  const step = steps[unit]
  return [Math.ceil(inUnit(from, unit) / step - hair) * step, Math.floor(inUnit(to, unit) / step + hair) * step]
}

/** Reads what was typed into a field; `unit` is meant where none is written. */
export function readField(field: Field, text: string, unit: OwnMeasure['unit']): OwnMeasure | number | Refusal {
  if (field.kind === 'length') {
    const measure = readMeasure(text, unit)
    if (measure === null) return 'unreadable'
    const length = measure.amount * inCentimetres[measure.unit]
    const { from, to } = field.of
    return length < from - hair || length > to + hair ? 'outside' : measure
  }
  const count = readCount(text)
  if (count === null) return 'unreadable'
  const [least, most] = rateLimits(field)
  return count < least || count > most ? 'outside' : count
}

function readCount(text: string): number | null {
  const written = text.trim().replace(',', '.').replace('½', '.5')
  const count = /^\d{0,3}(?:\.\d{1,2})?$/.test(written) ? Number(written) : Number.NaN
  return Number.isFinite(count) && count > 0 ? count : null
}

/** The least and the most that a rate may be, to a tenth, so that what is said is what counts. */
export function rateLimits({ of, count }: Extract<Field, { kind: 'rate' }>): readonly [least: number, most: number] {
  const share = of.within / 100
  return [Math.ceil(count * (1 - share) * 10) / 10, Math.floor(count * (1 + share) * 10) / 10]
}

/** What was given as the core takes it; what is as published is no change. */
export function changesOf(fields: readonly Field[], given: Given): Changes {
  const lengths: Record<string, string> = {}
  const gauges: Record<string, OwnGauge> = {}
  for (const field of fields) {
    const own = given.get(field.key)
    if (own === undefined) continue
    if (field.kind === 'length' && typeof own === 'object') {
      lengths[field.of.name] = `${own.amount} ${own.unit}`
    } else if (field.kind === 'rate' && typeof own === 'number') {
      const before = gauges[field.of.name] ?? { stitches: null, rows: null }
      gauges[field.of.name] = { ...before, [field.what]: String(own) }
    }
  }
  return { lengths, gauges }
}

/** As text, for an address and for memory: `my-depth=30cm&my-stitches=13`. */
export function givenText(given: Given): string {
  const parts = [...given].map(([key, own]): [string, string] => [
    key,
    typeof own === 'number' ? String(own) : `${own.amount}${own.unit}`,
  ])
  return new URLSearchParams(parts).toString()
}

/** What such a text asks for and can't be had, with why. */
export function refusedIn(text: string, fields: readonly Field[]): readonly (readonly [Field, Refusal])[] {
  const asked = new URLSearchParams(text)
  return fields.flatMap((field) => {
    const typed = asked.get(field.key)
    const own = typed === null ? null : readField(field, typed, 'cm')
    return typeof own === 'string' ? [[field, own] as const] : []
  })
}

/** What such a text gives; what can't be used is left out. */
export function givenIn(text: string, fields: readonly Field[]): Given {
  const asked = new URLSearchParams(text)
  const given = new Map<string, OwnMeasure | number>()
  for (const field of fields) {
    const own = readField(field, asked.get(field.key) ?? '', 'cm')
    if (typeof own !== 'string') given.set(field.key, own)
  }
  return given
}

/** Whether a text gives anything at all. */
export function givesAny(text: string): boolean {
  return /(?:^|[?&])my-/.test(text)
}

/** The part of an address after the path with what is given in place of what was. */
export function withGiven(search: string, given: Given): string {
  const parts = new URLSearchParams(search)
  for (const key of [...parts.keys()]) if (key.startsWith('my-')) parts.delete(key)
  for (const [key, value] of new URLSearchParams(givenText(given))) parts.set(key, value)
  const text = parts.toString()
  return text === '' ? '' : `?${text}`
}
