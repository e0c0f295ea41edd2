import { textForAll } from '../measure/segment.ts'
import type { PerSize } from '../measure/value.ts'
import type { LedgerRow } from '../rows/ledger.ts'
import type { Choice } from './chosen-nodes.ts'
import { chosenBlocks, chosenSegments, chosenValue } from './chosen-nodes.ts'
import type {
  Abbreviation,
  Adjustable,
  AdjustableRate,
  Fit,
  Measure,
  MeasureLine,
  NamedValue,
  Pattern,
  YarnUse,
} from './pattern.ts'

export type { Choice } from './chosen-nodes.ts'

/**
 * The pattern as one reader wants it: of one size, in their terms and units. What is left is the pattern's own, so that
 * a face shows it as it shows any other; nothing is computed. A size that the pattern does not have stands for all.
 */
export function chosen(pattern: Pattern, wanted: Choice): Pattern {
  const size = wanted.size !== null && wanted.size in pattern.sizes ? wanted.size : null
  const choice = { ...wanted, size }
  const swapped = choice.terms === 'other'
  const pick = <T>(each: PerSize<T>): PerSize<T> => (size === null ? each : each.filter((_, index) => index === size))
  const body = chosenBlocks(pattern.body, choice)
  const lead = chosenSegments(pattern.lead, choice)
  return {
    ...pattern,
    lead,
    summary: lead.length === 0 ? pattern.summary : textForAll(lead),
    terms: swapped ? otherTerms[pattern.terms] : pattern.terms,
    sizes: pick(pattern.sizes),
    fits: pattern.fits.map((line) => chosenLine(line, choice, pick)),
    finished: pattern.finished.map((line) => chosenLine(line, choice, pick)),
    measures: pattern.measures.map((measure) => pickMeasure(measure, pick)),
    fit: pattern.fit === null ? null : pickFit(pattern.fit, pick),
    materials: {
      ...pattern.materials,
      yarn: pattern.materials.yarn.map((line) => ({
        ...line,
        description: chosenSegments(line.description, choice),
        amount: line.amount === null ? null : chosenValue(line.amount, choice),
      })),
    },
    gauge: pattern.gauge.map((line) => ({ ...line, text: chosenSegments(line.text, choice) })),
    abbreviations: swapped ? otherAbbreviations(pattern.abbreviations) : pattern.abbreviations,
    readings: swapped
      ? pattern.readings.map(({ own, other, ...rest }) => ({ ...rest, own: other, other: own }))
      : pattern.readings,
    cautions:
      size === null
        ? pattern.cautions
        : pattern.cautions
            .filter(({ sizes }) => sizes?.includes(size) ?? true)
            .map((caution) => ({ ...caution, sizes: null })),
    body,
    rows: pattern.rows.map((row) => pickRow(row, pick)),
    pieces: pattern.pieces.map((piece) => ({ ...piece, times: pick(piece.times) })),
    values: eachOf(pattern.values, (value): NamedValue => ({ ...value, bySize: pick(value.bySize) })),
    adjustables: pattern.adjustables.map((each) => chosenAdjustable(each, choice, pick)),
    own: pattern.own.map(({ label, own, published }) => ({
      label,
      own: chosenSegments(own, choice),
      published: chosenSegments(published, choice),
    })),
    yarn: eachOf(pattern.yarn, (use) => pickYarn(use, choice.units, pick)),
  }
}

const otherTerms = { us: 'uk', uk: 'us' } as const

/** Keeps of one value a size the one that was chosen. */
type Pick = <T>(each: PerSize<T>) => PerSize<T>

function eachOf<T, U>(record: Readonly<Record<string, T>>, change: (value: T) => U): Readonly<Record<string, U>> {
  return Object.fromEntries(Object.entries(record).map(([name, value]) => [name, change(value)]))
}

function chosenLine({ label, value, cells }: MeasureLine, choice: Choice, pick: Pick): MeasureLine {
  return {
    label,
    value: chosenValue(value, choice),
    cells: pick(cells).map((segments) => chosenSegments(segments, { ...choice, size: null })),
  }
}

function chosenAdjustable(adjustable: Adjustable, choice: Choice, pick: Pick): Adjustable {
  const text = chosenSegments(adjustable.text, choice)
  if (adjustable.kind === 'length') return { ...adjustable, text, bySize: pick(adjustable.bySize) }
  const { stitches, rows } = adjustable
  return { ...adjustable, text, stitches: chosenRate(stitches, choice), rows: chosenRate(rows, choice) }
}

function chosenRate(rate: AdjustableRate | null, choice: Choice): AdjustableRate | null {
  return rate === null ? null : { ...rate, over: chosenSegments(rate.over, choice) }
}

function pickHead(head: Measure['head'], pick: Pick): Measure['head'] {
  return head === null ? null : { ...head, around: pick(head.around), stretched: pick(head.stretched) }
}

function pickMeasure(measure: Measure, pick: Pick): Measure {
  const maybe = <T>(each: PerSize<T> | null): PerSize<T> | null => (each === null ? null : pick(each))
  return {
    ...measure,
    target: maybe(measure.target),
    made: pick(measure.made),
    difference: maybe(measure.difference),
    head: pickHead(measure.head, pick),
  }
}

function pickFit({ low, high, made, ...rest }: Fit, pick: Pick): Fit {
  const both = (measure: Fit['low']): Fit['low'] => ({ cm: pick(measure.cm), in: pick(measure.in) })
  return { ...rest, low: both(low), high: both(high), made: made === null ? null : both(made) }
}

function pickRow(row: LedgerRow, pick: Pick): LedgerRow {
  return {
    ...row,
    total: pick(row.total),
    counts: eachOf(row.counts, pick),
    besides: eachOf(row.besides, pick),
    stated: row.stated === null ? null : eachOf(row.stated, pick),
    left: pick(row.left),
  }
}

function pickYarn(use: YarnUse, units: Choice['units'], pick: Pick): YarnUse {
  const maybe = (each: PerSize<number> | null): PerSize<number> | null => (each === null ? null : pick(each))
  return {
    ...use,
    grams: pick(use.grams),
    metres: units === 'imperial' && use.yards !== null ? null : maybe(use.metres),
    yards: units === 'metric' && use.metres !== null ? null : maybe(use.yards),
    skeins: maybe(use.skeins),
  }
}

const alphabet = new Intl.Collator('en')

/** Abbreviations as the other country writes them, in the order of the alphabet; none where the word is written in full there. */
function otherAbbreviations(abbreviations: readonly Abbreviation[]): readonly Abbreviation[] {
  return abbreviations
    .flatMap(({ abbreviation, meaning, special, other }) =>
      other === null ? [] : [{ ...other, special, other: { abbreviation, meaning } }],
    )
    .toSorted((a, b) => alphabet.compare(a.abbreviation, b.abbreviation))
}
