import type { Diagnostic, Span } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import { type HookName, isOneHook, millimetresOf, readHookName, usHook } from '../../grading/index.ts'
import { type Draft, textAt } from '../draft.ts'

const part = String.raw`\d{1,2}(?:½|\.5|\s?1\/2)?(?![\d.,½]*\s?-?mm|\d)`
const sized = String.raw`(?<mm>\d{1,2}(?:[.,]\d{1,3})?)\s?-?mm\b`
/** What stands between a letter and its millimetres: `H-8 (5 mm)`, `5 mm/H-8`, `H-8, 5 mm`, `5 mm (US H-8)`. */
const between = String.raw`\s*(?:[([/,;=]|or)?\s*`

function pattern(name: string): RegExp {
  const us = String.raw`(?:(?:US|U\.S\.)\s*(?:size\s*)?|size\s*)`
  return new RegExp(
    `(?<![\\p{L}\\d])(?:${us}?(?<before>${name})${between}${sized}|${sized.replace('<mm>', '<mmFirst>')}${between}${us}?(?<after>${name}))[)\\]]?(?![\\p{L}\\d-])`,
    'gu',
  )
}

/** In a fact that names a hook, a letter alone will do, or a number that is said to be of the US. */
const inFacts = pattern(String.raw`[A-Z](?:\/[A-Z])?(?:\s*[-–/]?\s*${part})?|(?<=US\s*(?:size\s*)?)${part}`)
/** In the text, letters are colours as well: only with their number, and a hyphen between. */
const inText = pattern(String.raw`[A-Z](?:\/[A-Z])?\s?[-–/]\s?${part}`)

/** Hooks whose letter or number and millimetres are two sizes, among the facts and in the text. */
export function* hookFindings(draft: Draft): Generator<Diagnostic> {
  for (const at of hookFacts(draft)) yield* disagreements(textAt(draft, at), at.start, inFacts)
  const text = draft.source.text.slice(draft.bodyStart)
  if (text.includes('mm')) yield* disagreements(text, draft.bodyStart, inText)
}

function hookFacts(draft: Draft): readonly Span[] {
  const { hooks, swatch } = draft.facts.facts
  const swatches = Object.entries(swatch).flatMap(([name, { hook }]) =>
    hook === undefined ? [] : [draft.facts.locate(...(name === '' ? ['swatch', 'hook'] : ['swatch', name, 'hook']))],
  )
  return [...hooks.map((_, index) => draft.facts.locate('hooks', index)), ...swatches]
}

function* disagreements(text: string, from: number, names: RegExp): Generator<Diagnostic> {
  for (const { 0: words, index, groups } of text.matchAll(names)) {
    const us = (groups?.before ?? groups?.after ?? '').trim()
    const mm = (groups?.mm ?? groups?.mmFirst ?? '').replace(',', '.')
    const name = readHookName(us)
    if (name === null || isOneHook(name, Number(mm)) !== false) continue
    const at = { start: from + index, end: from + index + words.length }
    const details = { words: words.trim(), us, mm, ofName: sizesOf(name), ofMm: usHook(Number(mm)) }
    yield diagnose('hook-sizes-disagree', at, details)
  }
}

/** `5 mm`; of parts that contradict each other both: `5 mm by its letter and 5.5 mm by its number`. */
function sizesOf({ letters, number }: HookName): string {
  const together = millimetresOf({ letters, number })
  if (together.length > 0) return `${together.join(' or ')} mm`
  const byLetter = millimetresOf({ letters, number: null }).join(' or ')
  return `${byLetter} mm by its letter and ${millimetresOf({ letters: [], number }).join(' or ')} mm by its number`
}
