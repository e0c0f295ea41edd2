import type { Adjustable } from '../../pattern/pattern.ts'

/** Position of the size in view; null where all are. */
export function shownSize(): number | null {
  const checked = document.querySelector<HTMLInputElement>('[data-choice=size] input:checked')
  const shown = /^size-(\d+)$/.exec(checked?.id ?? '')?.[1]
  return shown === undefined ? null : Number(shown)
}

/** The unit that the page shows; the draft's where it shows both. */
export function shownUnit(adjustables: readonly Adjustable[]): 'cm' | 'in' {
  const checked = document.querySelector<HTMLInputElement>('[data-choice=units] input:checked')?.value
  if (checked === 'cm' || checked === 'in') return checked
  return adjustables.flatMap((each) => (each.kind === 'length' ? [each.unit] : []))[0] ?? 'cm'
}
