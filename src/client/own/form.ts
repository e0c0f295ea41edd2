import type { OwnMeasure } from '../fit.ts'
import { hintOf, labelOf, refusalWords, type Shown } from './form-words.ts'
import { type Field, type Given, readField } from './given.ts'
import { resetButton } from './own-line.ts'

/** The form in which a reader gives their own numbers. */
export interface OwnForm {
  readonly element: HTMLFormElement
  /** Fills the fields, asking in the unit and telling of the size that the page shows. */
  readonly fill: (given: Given, shown: Shown) => void
  /** Says something below the fields, to those who hear the page too. */
  readonly say: (words: string) => void
}

interface Row {
  readonly field: Field
  readonly input: HTMLInputElement
  readonly show: (shown: Shown) => void
  readonly refuse: (words: string | null) => void
}

export function ownForm(fields: readonly Field[], take: (given: Given) => void, reset: () => void): OwnForm {
  const element = document.createElement('form')
  element.noValidate = true
  let unit: OwnMeasure['unit'] = 'cm'
  const hint = document.createElement('p')
  hint.className = 'hint'
  hint.textContent = 'What you leave empty stays as published.'
  element.append(hint)
  const rows = fields.map((field) => fieldRow(field, element))
  const buttons = document.createElement('p')
  buttons.className = 'own-buttons'
  const submit = document.createElement('button')
  submit.textContent = 'Work out my numbers'
  const back = resetButton(() => {
    rows[0]?.input.focus()
    reset()
  })
  buttons.append(submit, back)
  const said = document.createElement('p')
  said.className = 'own-said'
  said.setAttribute('role', 'status')
  element.append(buttons, said)
  element.addEventListener('submit', (event) => {
    event.preventDefault()
    const given = read(rows, unit)
    if (given !== null) take(given)
  })
  return {
    element,
    fill: (given, shown) => {
      unit = shown.unit
      back.hidden = given.size === 0
      for (const { field, input, show, refuse } of rows) {
        input.value = typed(given.get(field.key), shown.unit)
        show(shown)
        refuse(null)
      }
    },
    say: (words) => {
      said.textContent = words
    },
  }
}

/** What was given, in the unit asked for. */
function typed(own: OwnMeasure | number | undefined, unit: OwnMeasure['unit']): string {
  if (own === undefined || typeof own === 'number') return own === undefined ? '' : String(own)
  return own.unit === unit ? String(own.amount) : `${own.amount} ${own.unit}`
}

/** Everything that was typed; null, with the first field that can't be used in hand, where something can't be. */
function read(rows: readonly Row[], unit: OwnMeasure['unit']): Given | null {
  const given = new Map<string, OwnMeasure | number>()
  let first: HTMLInputElement | null = null
  for (const { field, input, refuse } of rows) {
    const own = input.value.trim() === '' ? null : readField(field, input.value, unit)
    refuse(typeof own === 'string' ? refusalWords(field, own, unit) : null)
    if (typeof own === 'string') first ??= input
    else if (own !== null) given.set(field.key, own)
  }
  first?.focus()
  return first === null ? given : null
}

function fieldRow(field: Field, form: HTMLFormElement): Row {
  const row = document.createElement('div')
  const label = document.createElement('label')
  const input = document.createElement('input')
  const hint = document.createElement('p')
  const wrong = document.createElement('p')
  row.className = 'own-field'
  input.id = field.key
  input.inputMode = 'decimal'
  input.autocomplete = 'off'
  label.htmlFor = input.id
  hint.id = `${field.key}-hint`
  hint.className = 'hint'
  wrong.id = `${field.key}-wrong`
  wrong.className = 'own-wrong'
  input.setAttribute('aria-describedby', `${wrong.id} ${hint.id}`)
  row.append(label, input, hint, wrong)
  form.append(row)
  return {
    field,
    input,
    show: (shown) => {
      label.textContent = labelOf(field, shown.unit)
      hint.textContent = hintOf(field, shown)
    },
    refuse: (words) => {
      wrong.textContent = words ?? ''
      wrong.hidden = words === null
      input.ariaInvalid = words === null ? null : 'true'
    },
  }
}
