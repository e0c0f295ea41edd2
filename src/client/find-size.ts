import type { ReaderData } from '../html/reader-data.ts'
import { readMeasure, sizesFor } from './fit.ts'
import { fitWords } from './fit-words.ts'
import type { Memory } from './memory.ts'

/**
 * The form that finds a size by a reader's own measure; shown only here, for it does nothing without script. What comes
 * back hands it other numbers.
 */
export function startFindSize({ fit: published, sizes }: ReaderData, memory: Memory): (data: ReaderData) => void {
  let fit = published
  const form = document.querySelector<HTMLFormElement>('.find-size')
  const input = form?.querySelector('input') ?? null
  const unit = form?.querySelector('select') ?? null
  const answer = form?.querySelector('output') ?? null
  if (form === null || input === null || unit === null || answer === null || published === null) return () => {}
  const kept = `measure:${published.label.toLowerCase()}`
  const given = readMeasure(memory.read(kept) ?? '', published.unit)
  if (given !== null) {
    input.value = String(given.amount)
    unit.value = given.unit
  }
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    const own = readMeasure(input.value, unit.value === 'in' ? 'in' : 'cm')
    const body = fit ?? published
    const found = own === null ? null : sizesFor(body, own)
    if (own === null || found === null) {
      answer.replaceChildren('Please give a measure such as 98 or 38½.')
      return
    }
    memory.write(kept, `${own.amount} ${own.unit}`)
    const show = (size: number): void => {
      choose(size)
      const rest = found.sizes.filter((each) => each !== size)
      answer.replaceChildren(
        fitWords(body, sizes, found, size, own),
        ...rest.flatMap((each) => button(sizes, each, show)),
      )
    }
    show(found.sizes[0] ?? 0)
  })
  form.hidden = false
  return (data) => {
    fit = data.fit
    answer.replaceChildren()
  }
}

/** A further size that would do, after a blank. */
function button(names: readonly string[], size: number, take: (size: number) => void): Node[] {
  const made = document.createElement('button')
  made.type = 'button'
  made.textContent = `Show ${names[size] ?? ''} instead`
  made.addEventListener('click', () => take(size))
  return [document.createTextNode(' '), made]
}

/** As a tap on its button does. */
function choose(size: number): void {
  document.getElementById(`size-${size}`)?.click()
}
