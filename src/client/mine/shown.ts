import { shownSize } from '../own/shown.ts'
import type { MineJob } from './job.ts'

const chosenIn = (name: string): HTMLInputElement | null =>
  document.querySelector<HTMLInputElement>(`[data-choice=${name}] input:checked`)

const units = { both: 'both', cm: 'metric', in: 'imperial' } as const

/** What the page shows now. */
export function shown(): Pick<MineJob, 'choice' | 'form'> {
  const unit = chosenIn('units')?.value
  const letters = chosenIn('text')?.value ?? 'usual'
  return {
    choice: {
      size: shownSize(),
      terms: chosenIn('terms')?.id === 'terms-other' ? 'other' : 'own',
      units: unit === 'cm' || unit === 'in' ? units[unit] : 'both',
    },
    form: letters === 'usual' ? 'usual' : 'large',
  }
}

const unitWords = { both: 'both measures', metric: 'centimetres', imperial: 'inches' } as const

/** `Adult S, UK terms, centimetres, large print` */
function shownWords(sizes: readonly string[]): string {
  const { choice, form } = shown()
  const words = [
    choice.size === null ? (sizes.length === 1 ? null : 'All sizes') : (sizes[choice.size] ?? null),
    `${(chosenIn('terms')?.value ?? '').toUpperCase()} terms`,
    unitWords[choice.units],
    form === 'large' ? 'large print' : null,
  ]
  return words.filter((each) => each !== null).join(', ')
}

/** The same in the name of a file. */
export function fileWords(sizes: readonly string[]): readonly string[] {
  return shownWords(sizes)
    .split(', ')
    .map((words) =>
      words
        .toLowerCase()
        .replace(/ (?:terms|measures)$/, '')
        .replace(/[^\p{L}\p{N}]+/gu, '-'),
    )
}
