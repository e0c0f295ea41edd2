import type { Diagnostic } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { PerSize } from '../measure/index.ts'
import { readQuantity, units } from '../measure/index.ts'
import type { Ledger, LedgerRow } from '../rows/ledger.ts'
import { assignYarns } from '../yarn/assign.ts'
import {
  type Beside,
  estimateYarn,
  type WeighedSample,
  type WeighedSwatch,
  type YarnEstimate,
  type YarnQuestion,
  type YarnRow,
} from '../yarn/estimate.ts'
import type { Strands } from '../yarn/spoken.ts'
import { timesMade } from '../yarn/times.ts'
import { unitsOf, useOfFabric } from '../yarn/units.ts'
import { swatchSides } from './check-facts.ts'
import type { Draft } from './draft.ts'
import type { Facts, YarnFacts } from './facts.ts'
import { finishesOf } from './finish.ts'
import type { Graded } from './grade.ts'
import type { YarnUse } from './pattern.ts'
import type { Worked } from './work.ts'
import { claimsOf } from './yarn-claims.ts'
import { fallFindings, unclearFindings } from './yarn-findings.ts'
import { wordsForSize, type YarnWords, yarnWords } from './yarn-words.ts'

/**
 * Yarn for each size, by the yarn's name; one is left out where it can't be told: nothing was weighed, a row was not
 * worked, or the rows don't tell which yarn they take. Findings go to `findings`.
 */
export function yarnUse(work: YarnWork, findings: Diagnostic[]): Record<string, YarnUse> {
  const { facts } = work.draft.facts
  const question = questionOf(work, findings)
  if (question === null) return {}
  const estimate = estimateYarn(question)
  findings.push(
    ...unclearFindings(work.draft, work.ledger, question.rows, estimate),
    ...fallFindings(work.draft, estimate),
  )
  return usesOf(facts, estimate)
}

/** What yarn is estimated from. */
export interface YarnWork {
  readonly draft: Draft
  readonly graded: Graded
  readonly ledger: Ledger
  readonly making: Making
}

/** Null where there is no yarn, or a row was not worked. */
function questionOf({ draft, graded, ledger, making }: YarnWork, findings: Diagnostic[]): YarnQuestion | null {
  const { words, times } = making
  const { facts } = draft.facts
  const beside = besideOf(draft, graded, findings)
  const claims = claimsOf(draft, ledger, findings)
  if (facts.yarn.length === 0 || ledger.rows.some((row) => row.status !== 'worked')) return null
  const strands = strandsOf(
    facts,
    ledger,
    assignYarns(
      facts.yarn.map(({ as }) => as),
      words.opening,
      words.rows,
      claims,
    ),
    words,
  )
  const rows = ledger.rows.map(
    (row, index): YarnRow => ({
      units: times(row.piece).map((made, size) => made * unitsOf(row, facts.terms, size)),
      strands: strands[index] ?? null,
    }),
  )
  const swatch = weighedSwatch(facts, graded, ledger.rows)
  return { sizes: facts.sizes.length, rows, beside, swatch, samples: weighedSamples(draft, graded) }
}

/** Entries of the ledger in its own order: the words stand in the order of the text. */
function strandsOf(facts: Facts, ledger: Ledger, spoken: readonly Strands[], { rows }: YarnWords): Strands[] {
  const found: Strands[] = ledger.rows.map(() => facts.yarn.map((_, yarn) => (yarn === 0 ? 1 : 0)))
  const inOrder = [...ledger.written].sort((a, b) => a.at.start - b.at.start)
  let next = 0
  for (const [index, { entries }] of inOrder.entries()) {
    const count = rows[index]?.numbers.length ?? 0
    for (let entry = 0; entry < count; entry += 1) found[entries[0] + entry] = spoken[next + entry] ?? null
    next += count
  }
  return found
}

/** What is said of the pieces beside their rows. */
export interface Making {
  readonly words: YarnWords
  /** How often a piece is made, size by size. */
  readonly times: (piece: string) => PerSize<number>
}

export function makingOf(draft: Draft, graded: Graded, ledger: Ledger): Making {
  const words = yarnWords(draft, ledger)
  return { words, times: timesOf(draft.facts.facts, words, graded) }
}

function timesOf(facts: Facts, { pieces }: YarnWords, graded: Graded): Making['times'] {
  const known = new Map<string, PerSize<number>>()
  return (piece) => {
    const before = known.get(piece)
    if (before !== undefined) return before
    const { heading = piece, prose = '' } = pieces.get(piece) ?? {}
    const found = facts.sizes.map((_, size) =>
      timesMade(wordsForSize(heading, size, graded), wordsForSize(prose, size, graded), size),
    )
    known.set(piece, found)
    return found
  }
}

function usesOf(facts: Facts, { byYarn }: YarnEstimate): Record<string, YarnUse> {
  const uses = facts.yarn.flatMap((yarn, index): [string, YarnUse][] => {
    const grams = byYarn[index] ?? null
    return grams === null ? [] : [[yarn.as, yarnUseOf(grams, yarn, facts.margin)]]
  })
  return Object.fromEntries(uses)
}

const yardInMetres = 0.9144

function yarnUseOf(grams: PerSize<number>, yarn: YarnFacts, margin: number): YarnUse {
  const weight = grammes(yarn.skein?.weight)
  const perGram = metresPerGram(yarn)
  const spare = 1 + margin / 100
  return {
    grams: grams.map(upward),
    metres: perGram === null ? null : grams.map((gram) => upward(gram * perGram)),
    yards: perGram === null ? null : grams.map((gram) => upward((gram * perGram) / yardInMetres)),
    skeins: weight === null ? null : grams.map((gram) => upward((gram * spare) / weight)),
    margin,
  }
}

/** Rounded up, so that there is never too little; a millionth is the arithmetic's, not the yarn's. */
function upward(amount: number): number {
  return Math.ceil(amount - 1e-6)
}

/** What the piece carries besides its rows, one for each yarn. */
function besideOf(draft: Draft, graded: Graded, findings: Diagnostic[]): readonly Beside[] {
  const { facts, locate } = draft.facts
  const names = facts.yarn.map(({ as }) => as)
  const none = facts.sizes.map(() => 0)
  const beside = facts.yarn.map((): Beside => ({ units: none, grams: none }))
  for (const { kind, yarn, bySize, path } of finishesOf(draft, graded, findings)) {
    const index = yarn === null ? 0 : names.indexOf(yarn)
    const [own, before] = [facts.yarn[index], beside[index]]
    if (yarn !== null && index < 0)
      findings.push(diagnose('yarn-unknown', locate(...path, 'yarn'), { name: yarn, nearest: names[0] ?? null }))
    if (own === undefined || before === undefined) continue
    const perGram = metresPerGram(own)
    if (perGram === null && bySize.some(({ centimetres }) => centimetres > 0))
      findings.push(diagnose('finish-needs-skein', locate(...path), { kind, yarn: own.as }))
    const grams = bySize.map((each) => each.grams + (perGram === null ? 0 : each.centimetres / 100 / perGram))
    beside[index] = {
      units: before.units.map((unit, size) => unit + (bySize[size]?.units ?? 0)),
      grams: before.grams.map((gram, size) => gram + (grams[size] ?? 0)),
    }
  }
  return beside
}

function weighedSwatch(
  { swatch, terms }: Facts,
  { environment }: Graded,
  rows: readonly LedgerRow[],
): WeighedSwatch | null {
  const written = Object.values(swatch)[0]
  const grams = grammes(written?.weight)
  const sides = swatchSides(written?.size ?? '')
  const found = environment.gauge(null)
  if (grams === null || sides === null || found.kind !== 'found') return null
  const { stitches, rows: high } = found.gauge
  if (stitches === null || high === null) return null
  const [width, height] = sides
  const count = stitches.valueOf() * width * high.valueOf() * height
  const use = (written?.in === undefined ? null : useOfFabric(written.in, terms)) ?? averageUse(rows, terms)
  return count === 0 ? null : { grams, units: count * use }
}

/** A swatch of a stitch pattern is the same mixture as the piece: its stitch is the piece's average one. */
function averageUse(rows: readonly LedgerRow[], terms: Facts['terms']): number {
  let made = 0
  let stitches = 0
  for (const row of rows) {
    for (const [size, total] of row.total.entries()) {
      made += unitsOf(row, terms, size)
      stitches += total ?? 0
    }
  }
  return stitches === 0 || made === 0 ? 1 : made / stitches
}

function weighedSamples({ facts: { facts }, own }: Draft, graded: Graded): WeighedSample[] {
  const { sample, sizes, yarn } = facts
  const made = own === undefined || sample.length === 0 ? null : madeBefore(own.published, graded)
  return sample.flatMap(({ size, used }) => {
    const position = sizes.indexOf(size)
    if (position === -1) return []
    const grams = yarn.map(({ as }) => grammes(used[as]))
    return [{ size: position, grams, ...(made === null ? {} : { made: made(position) }) }]
  })
}

/**
 * What was in a piece that was weighed before its reader changed the numbers. With another gauge as many stitches as
 * cover the same area: fabric is taken to weigh what it weighed.
 */
function madeBefore(
  { draft, graded, ledger }: Worked,
  now: Graded,
): ((size: number) => NonNullable<WeighedSample['made']>) | null {
  const question = questionOf({ draft, graded, ledger, making: makingOf(draft, graded, ledger) }, [])
  if (question === null) return null
  const { units, whole } = estimateYarn(question)
  const denser = densityOf(now) / densityOf(graded)
  return (size) => ({
    byYarn: units.map((each) => (each[size] ?? 0) * denser),
    whole: (whole[size] ?? 0) * denser,
  })
}

/** Stitches in a square centimetre, or in a centimetre of a swatch that tells only one way. */
function densityOf({ environment }: Graded): number {
  const found = environment.gauge(null)
  if (found.kind !== 'found') return 1
  return (found.gauge.stitches?.valueOf() ?? 1) * (found.gauge.rows?.valueOf() ?? 1)
}

function metresPerGram({ skein }: YarnFacts): number | null {
  const weight = grammes(skein?.weight)
  const centimetres = baseOf(skein?.length, 'length')
  return weight === null || centimetres === null || weight === 0 ? null : centimetres / 100 / weight
}

function grammes(text: string | undefined): number | null {
  return baseOf(text, 'mass')
}

/** Grams or centimetres; null where the text is no measure of that kind. */
function baseOf(text: string | undefined, kind: 'mass' | 'length'): number | null {
  const quantity = text === undefined ? null : readQuantity(text)
  return quantity !== null && units[quantity.unit].kind === kind ? quantity.base.valueOf() : null
}
