import type { Code, Severity } from '../diagnostic/index.ts'
import type { Solver } from '../formula/index.ts'
import type { Excerpt } from './excerpt.ts'
import { excerptOf } from './excerpt.ts'
import { groups } from './groups.ts'
import { runSample } from './run.ts'
import { samples } from './samples/index.ts'

/** A kind of finding as the manual shows it: what it really says of its faulty sample, and both samples. */
export interface ManualEntry {
  readonly code: Code
  readonly severity: Severity
  readonly message: string
  readonly hint: string | null
  readonly faulty: Excerpt
  readonly sound: Excerpt
}

export interface ManualPart {
  readonly title: string
  readonly entries: readonly ManualEntry[]
}

function entryFor(code: Code, solver: Solver): ManualEntry {
  const { faulty, sound } = samples[code]
  const found = runSample(faulty, solver).outcome.diagnostics.find((each) => each.code === code)
  if (found === undefined) throw new Error(`The sample for ${code} does not have it.`)
  const { severity, message, hint = null, at } = found
  const shown = { faulty: excerptOf(faulty, sound, at), sound: excerptOf(sound, faulty, null) }
  return { code, severity, message, hint, ...shown }
}

/** The manual of findings. Its sentences are not written down anywhere: the samples are read and worked to have them. */
export function manualParts(solver: Solver): readonly ManualPart[] {
  return groups.map(({ title, codes }) => ({ title, entries: codes.map((code) => entryFor(code, solver)) }))
}
