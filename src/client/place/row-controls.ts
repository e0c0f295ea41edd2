import { doneOf, isDone, type Place } from './place.ts'
import type { Work, WorkRow } from './rows.ts'
import { rowName, rowsName } from './words.ts'

/** Sets how many of a row's rows are done. */
export type SetDone = (row: WorkRow, count: number) => void

/** What a row of the page has been given: a box to tick, or a counter where it stands for several. */
interface Control {
  readonly row: WorkRow
  readonly element: HTMLElement
  readonly show: (place: Place) => void
}

/** The boxes and counters of all rows of one size. */
export interface RowControls {
  readonly show: (place: Place, current: WorkRow | null) => void
  readonly remove: () => void
}

/** Puts a box or a counter into each row of the page that a size works. */
export function addControls({ rows }: Work, setDone: SetDone): RowControls {
  const controls = rows.flatMap((row) => {
    const element = document.getElementById(row.id)
    return element === null
      ? []
      : [row.stitches.length === 1 ? box(row, element, setDone) : counter(row, element, setDone)]
  })
  return {
    show: (place, current) => {
      for (const { row, show } of controls) {
        show(place)
        mark(row, isDone(place, row), row === current)
      }
    },
    remove: () => {
      for (const { row, element } of controls) {
        element.parentElement?.classList.remove('row-with-box')
        element.remove()
        mark(row, false, false)
      }
    },
  }
}

function mark({ id }: WorkRow, done: boolean, current: boolean): void {
  const element = document.getElementById(id)
  element?.classList.toggle('row-done', done)
  element?.classList.toggle('row-current', current)
  if (current) element?.setAttribute('aria-current', 'step')
  else element?.removeAttribute('aria-current')
}

function box(row: WorkRow, parent: HTMLElement, setDone: SetDone): Control {
  const element = document.createElement('label')
  const input = document.createElement('input')
  element.className = 'tick'
  input.type = 'checkbox'
  input.setAttribute('aria-label', `${rowName({ row, done: 0 })} done`)
  input.addEventListener('change', () => setDone(row, input.checked ? 1 : 0))
  element.append(input)
  parent.append(element)
  parent.classList.add('row-with-box')
  const show = (place: Place): void => {
    input.checked = isDone(place, row)
  }
  return { row, element, show }
}

function counter(row: WorkRow, parent: HTMLElement, setDone: SetDone): Control {
  const element = document.createElement('div')
  const count = document.createElement('span')
  let done = 0
  element.className = 'counter'
  element.setAttribute('role', 'group')
  element.setAttribute('aria-label', rowsName(row))
  const less = button('−', 'One row less', () => setDone(row, done - 1))
  const more = button('+', 'One row more', () => setDone(row, done + 1))
  element.append(less, count, more)
  parent.append(element)
  const show = (place: Place): void => {
    done = doneOf(place, row)
    count.textContent = `${done} of ${row.stitches.length} done`
    less.ariaDisabled = String(done === 0)
    more.ariaDisabled = String(done === row.stitches.length)
  }
  return { row, element, show }
}

/** Where nothing is left to count it only says so, and keeps the focus. */
function button(sign: string, name: string, press: () => void): HTMLButtonElement {
  const made = document.createElement('button')
  made.type = 'button'
  made.textContent = sign
  made.setAttribute('aria-label', name)
  made.addEventListener('click', () => {
    if (made.ariaDisabled !== 'true') press()
  })
  return made
}

/** Brings a row into view where it is out of it. */
export function revealRow(row: WorkRow | null): void {
  document.getElementById(row?.id ?? '')?.scrollIntoView({ block: 'nearest' })
}

/** To a row, with the focus, for the keyboard to go on from there. */
export function focusRow(row: WorkRow | null): void {
  const element = document.getElementById(row?.id ?? '')
  element?.scrollIntoView({ block: 'center' })
  element?.querySelector<HTMLElement>('.tick input, .counter button:last-child')?.focus({ preventScroll: true })
}
