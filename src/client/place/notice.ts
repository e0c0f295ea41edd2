import type { Older } from './keep.ts'

/** What stands above the first row as long as nothing is ticked. */
export interface Notice {
  /** `choose`: a size must be chosen first. An older edition's place may be gone on from. */
  readonly show: (what: 'choose' | Older | null) => void
}

export function addNotice(goOn: (older: Older) => void): Notice {
  const element = document.createElement('p')
  element.className = 'place-notice hint'
  element.hidden = true
  return {
    show: (what) => {
      // The rows may have been put into the page anew.
      document.querySelector('.rows')?.before(element)
      element.hidden = what === null
      if (what === null) return
      if (what === 'choose') element.textContent = 'Choose your size to tick off rows as you go.'
      else element.replaceChildren(`You have ticked rows of edition ${what.edition}. `, button(what, goOn))
    },
  }
}

function button(older: Older, goOn: (older: Older) => void): HTMLButtonElement {
  const made = document.createElement('button')
  made.type = 'button'
  made.textContent = 'Go on from there'
  made.addEventListener('click', () => goOn(older))
  return made
}
