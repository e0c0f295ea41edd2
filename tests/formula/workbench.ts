import type { Diagnostic } from '../../src/diagnostic/index.ts'
import type { Environment, Settled } from '../../src/formula/index.ts'
import { evaluate, plainBySize, printValue, readFormula, readGrading, settle } from '../../src/formula/index.ts'
import type { Facts } from '../../src/grading/index.ts'
import { createEnvironment, readFits, readGauge } from '../../src/grading/index.ts'
import { textForAll } from '../../src/measure/index.ts'

export const nowhere = { start: 0, end: 0 }

export function written(text: string) {
  return { text, at: nowhere }
}

export function gauge(stitches: string | null, rows: string | null) {
  const outcome = readGauge({
    stitches: stitches === null ? [] : [written(stitches)],
    rows: rows === null ? [] : [written(rows)],
  })
  if (outcome.value === null) throw new Error(`not a gauge: ${stitches}, ${rows}`)
  return outcome.value
}

export function body(table: string, columns: readonly string[]) {
  const outcome = readFits({ table: written(table), columns: columns.map(written), at: nowhere }, columns.length)
  if (outcome.value === null) throw new Error(outcome.diagnostics.map(({ message }) => message).join('\n'))
  return outcome.value
}

/** Three sizes, 12 stitches and 8 rows per 10 cm, a second swatch `ribbing`, heads, and a skein of 100 g and 110 m. */
export function environment(facts: Partial<Facts> = {}): Environment {
  const main = { name: 'main', gauge: gauge('12 per 10 cm', '8 per 10 cm') }
  const ribbing = { name: 'ribbing', gauge: gauge('16 per 4 in', null) }
  return createEnvironment({
    sizes: ['Child', 'Adult S', 'Adult L'],
    swatches: [main, ribbing],
    body: body('head', ['Child', 'Woman', 'Man']),
    skein: null,
    ...facts,
  })
}

export interface Sheet {
  readonly settled: Settled
  readonly diagnostics: readonly Diagnostic[]
}

export function sheet(text: string, facts = environment()): Sheet {
  const read = readGrading(text, 0)
  const settled = settle(read.value, facts)
  return { settled: settled.value, diagnostics: [...read.diagnostics, ...settled.diagnostics] }
}

/** The value of one formula, as plain numbers in its own unit; null when it has none. */
export function calculated(formula: string, text = '', facts = environment()) {
  const value = sheet(`${text}\nresult = ${formula}`, facts).settled.values.get('result')
  return value === undefined ? null : plainBySize(value)
}

/** What a placeholder prints for a reader of all sizes; null when it cannot. */
export function printed(placeholder: string, text = '', facts = environment()): string | null {
  const segments = show(placeholder, text, facts).value
  return segments === null ? null : textForAll(segments)
}

export function show(placeholder: string, text = '', facts = environment()) {
  const read = readFormula(placeholder, 0)
  const { settled } = sheet(text, facts)
  const found = read.value === null ? null : evaluate(read.value, settled, facts)
  const shown =
    read.value === null || found === null || found.value === null ? null : printValue(found.value, read.value, facts)
  const diagnostics = [...read.diagnostics, ...(found?.diagnostics ?? []), ...(shown?.diagnostics ?? [])]
  return { value: shown?.value ?? null, diagnostics }
}

/** Splits a text in which one place is marked, `a + ‹b›`, into the text and the place. */
export function marked(source: string) {
  const start = source.indexOf('‹')
  const end = source.indexOf('›') - 1
  return { text: source.replace(/[‹›]/g, ''), at: { start, end } }
}
