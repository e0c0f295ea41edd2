import type { ReaderData } from '../../html/reader-data.ts'
import type { Memory } from '../memory.ts'
import { type Core, loadCore, type OwnPattern, type Worked } from './core.ts'
import { ownForm } from './form.ts'
import { refusalWords } from './form-words.ts'
import { changesOf, fieldsOf, type Given, givenIn, givenText, givesAny, refusedIn, withGiven } from './given.ts'
import { addOwnLine, type Told } from './own-line.ts'
import { partsOfPage } from './parts.ts'
import { shownSize, shownUnit } from './shown.ts'

/** What the rest of the page's script does when its numbers change; null for those that it came with. `pattern` gives all of them. */
export type Renew = (data: ReaderData | null, pattern: OwnPattern) => void

/**
 * Puts the form for a reader's own numbers into its panel, and shows what they come to. False where the core can't be had:
 * without a connection, in an old browser.
 */
export async function openOwn(panel: HTMLElement, kept: string, memory: Memory, renew: Renew): Promise<boolean> {
  const core = await loadCore(panel.dataset.recipe ?? '')
  if (core === null) return false
  runOwn(core, panel, kept, memory, renew)
  return true
}

function runOwn(core: Core, panel: HTMLElement, kept: string, memory: Memory, renew: Renew): void {
  const fields = fieldsOf(core.adjustables)
  const parts = partsOfPage()
  const reset = (): void => void take(new Map(), true)
  const form = ownForm(fields, (own) => void take(own, true), reset)
  const line = addOwnLine(() => {
    panel.querySelector('summary')?.focus()
    reset()
  })
  const shown = () => ({ unit: shownUnit(core.adjustables), size: shownSize() })
  let given: Given = new Map()
  let worked: Worked | null = null

  /** `own`: by the reader, and not by an address that was sent or what is remembered. */
  async function take(next: Given, own: boolean): Promise<void> {
    given = next
    form.fill(next, shown())
    if (own) keep(next, kept, memory)
    if (next.size > 0) form.say('Working it out …')
    const answer = next.size === 0 ? null : await core.work(changesOf(fields, next))
    // Others may have been given meanwhile.
    if (given !== next) return
    worked = answer
    show()
    if (next.size > 0) form.say(answer === null ? 'This could not be worked out.' : saidOf(answer))
    else if (own) form.say('These are the published numbers.')
  }

  /** The reader's numbers where they come out for the sizes in view, else the published ones. */
  function show(): void {
    const view = worked === null ? null : viewOf(worked, shownSize())
    if (worked === null || view === null) line.hide()
    else line.show({ own: worked.page.own, ...view })
    if (worked !== null && view?.comesOut === true) parts.show(worked.page)
    else parts.showPublished()
    renew(worked !== null && view?.comesOut === true ? worked.page.data : null, core.pattern)
  }

  document.querySelector('[data-choice=size]')?.addEventListener('change', () => {
    form.fill(given, shown())
    if (worked === null) return
    show()
    form.say(saidOf(worked))
  })
  document.querySelector('[data-choice=units]')?.addEventListener('change', () => {
    form.fill(given, shown())
  })
  panel.querySelector('.own-body')?.replaceChildren(form.element)
  const asked = givesAny(location.search) ? location.search : (memory.read(kept) ?? '')
  const first = givenIn(asked, fields)
  void take(first, false).then(() => {
    if (given !== first) return
    const refused = refusedIn(asked, fields).map(([field, why]) => refusalWords(field, why, shown().unit))
    if (refused.length === 0) return
    line.refuse(refused)
    form.say(refused.join(' '))
  })
}

/** On the device and in the address. */
function keep(given: Given, kept: string, memory: Memory): void {
  if (given.size === 0) memory.forget(kept)
  else memory.write(kept, givenText(given))
  const { pathname, search, hash } = location
  history.replaceState(history.state, '', `${pathname}${withGiven(search, given)}${hash}`)
}

/** What is told where one size, or all with null, is in view; null where nothing differs from what is published. */
function viewOf({ page, troubles }: Worked, size: number | null): Omit<Told, 'own'> | null {
  if (page.own.length === 0) return null
  const own = troubles.filter(({ sizes }) => sizes.length === 0 || size === null || sizes.includes(size))
  const stops = own.filter((each) => each.stops)
  const told = stops.length > 0 ? stops : own
  return { comesOut: stops.length === 0, troubles: [...new Set(told.map(({ words }) => words))] }
}

function saidOf(worked: Worked): string {
  const view = viewOf(worked, shownSize())
  if (view === null) return 'That is as published: nothing changes.'
  if (view.comesOut) return ['Done. The page shows your own numbers.', ...view.troubles].join(' ')
  return ['This does not come out, so the published numbers are shown.', ...view.troubles].join(' ')
}
