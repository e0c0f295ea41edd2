import { choiceIn, withChoice } from './address.ts'
import type { Memory } from './memory.ts'

/**
 * A choice is a group of radio buttons that the page's style sheet works by, so that it does without script. Here it is
 * put into the address and remembered: `data-choice` is its name in the address, `data-keep` the name it is remembered
 * under; `data-local` keeps it out of the address. The first button of a group stands for how the page comes, which the
 * address need not say.
 */
export function startChoices(memory: Memory): void {
  for (const group of document.querySelectorAll<HTMLElement>('[data-choice]')) startChoice(group, memory)
}

function startChoice(group: HTMLElement, memory: Memory): void {
  const { choice: name = '', keep = name, local } = group.dataset
  const buttons = [...group.querySelectorAll<HTMLInputElement>('input[type=radio]')]
  const values = buttons.map(({ value }) => value)
  const asked = (): string | null => (local === undefined ? choiceIn(location.search, name, values) : null)
  const show = (wanted: string | null): void => press(buttons, asked() ?? wanted)
  group.addEventListener('change', ({ isTrusted }) => {
    const button = buttons.find(({ checked }) => checked)
    const value = button?.value ?? ''
    showChosen(group)
    // A link that was sent asks for its sender's choice: only the reader's own is remembered.
    if (isTrusted) memory.write(keep, value)
    if (local === undefined) toAddress(name, value === values[0] ? null : value)
  })
  if (local === undefined) addEventListener('popstate', () => show(values[0] ?? null))
  show(memory.read(keep))
}

/** Many sizes do not all fit beside each other: the line of them moves so that the chosen one is in view. */
export function showChosen(group: Element): void {
  const line = group.querySelector('.choice-options')
  const option = group.querySelector(':checked')?.closest('label')
  if (!line || !option) return
  const [within, own] = [line.getBoundingClientRect(), option.getBoundingClientRect()]
  line.scrollLeft += own.left + own.width / 2 - (within.left + within.width / 2)
}

/** As a reader would: whatever depends on the choice hears of it. */
function press(buttons: readonly HTMLInputElement[], value: string | null): void {
  const button = buttons.find((each) => each.value === value)
  if (button === undefined || button.checked) return
  button.checked = true
  button.dispatchEvent(new Event('change', { bubbles: true }))
}

function toAddress(name: string, value: string | null): void {
  const search = withChoice(location.search, name, value)
  const { pathname, hash } = location
  if (search !== location.search) history.replaceState(history.state, '', `${pathname}${search}${hash}`)
}
