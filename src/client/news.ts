import type { Reply } from '../offline/message.ts'

type News = Extract<Reply, { readonly kind: 'news' }>

/** Tells the reader that the site has a newer edition; what they work from stays until they ask for it. */
export function announce(news: News, show: () => Promise<void>): void {
  document.querySelector('.news')?.remove()
  const box = document.createElement('div')
  box.className = 'news'
  box.setAttribute('role', 'status')
  document.querySelector('main')?.prepend(box)
  // Words that come into a region that is there are read out.
  setTimeout(() => box.append(...contents(news, box, show)))
}

function contents(news: News, box: HTMLElement, show: () => Promise<void>): HTMLElement[] {
  const words = document.createElement('p')
  words.textContent = wordsOf(news)
  const shown = button('Show it', () => void show())
  return [words, shown, button('Not now', () => box.remove())]
}

function wordsOf({ edition, sameEdition }: News): string {
  if (sameEdition) return 'This pattern has been corrected.'
  return edition === null ? 'There is a new edition.' : `There is a new edition, ${edition}.`
}

function button(text: string, press: () => void): HTMLButtonElement {
  const made = document.createElement('button')
  made.type = 'button'
  made.textContent = text
  made.addEventListener('click', press)
  return made
}
