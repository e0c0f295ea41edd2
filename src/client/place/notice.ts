import type { Older } from './keep.ts'

/** What stands above the first row as long as nothing is ticked. */
export interface Notice {
  /** `choose`: a size must be chosen first, as the page says. An older edition's place may be gone on from. */
  readonly show: (what: 'choose' | Older | null) => void
}

export function placeNotice(goOn: (older: Older) => void): Notice {
  const words = document.querySelector('.place-notice')?.textContent ?? ''
  return {
    show: (what) => {
      // The rows may have been put into the page anew.
      const element = document.querySelector<HTMLElement>('.place-notice')
      if (element === null) return
      element.hidden = what === null
      if (what === 'choose' && element.textContent !== words) element.textContent = words
      if (what !== null && what !== 'choose')
        element.replaceChildren(`You have ticked rows of edition ${what.edition}. `, button(what, goOn))
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
