import type { PageNumbers } from '../../own/page.ts'

/** What stands at the top of the text while a reader has numbers of their own, in print too. */
export interface OwnLine {
  readonly show: (told: Told) => void
  /** What an address asks for, or the device remembers, and can't be had. */
  readonly refuse: (words: readonly string[]) => void
  readonly hide: () => void
}

export interface Told {
  readonly own: PageNumbers['own']
  /** Whether the page shows them: else they don't come out for the sizes in view. */
  readonly comesOut: boolean
  /** What does not come out, or needs a look. */
  readonly troubles: readonly string[]
}

const elsewhere =
  'Rows, counts, measures and yarn follow your numbers; yarn is reckoned as if your fabric weighs the same for its area. “Just mine” prints them; the other print-outs and the page of counts have the published numbers.'

export function addOwnLine(reset: () => void): OwnLine {
  const element = document.createElement('section')
  element.className = 'own-line'
  element.setAttribute('aria-label', 'Your own numbers')
  element.hidden = true
  document.querySelector('.pattern-text > .bar')?.after(element)
  return {
    show: ({ own, comesOut, troubles }) => {
      const lead = comesOut
        ? 'Worked out with your own numbers, not as published:'
        : 'Your own numbers do not come out, so the published ones are shown. You asked for:'
      element.replaceChildren(
        made('p', lead),
        list(own.map(ownHtml)),
        ...(troubles.length === 0 ? [] : [made('p', comesOut ? 'Have a look at this:' : 'What does not come out:')]),
        list(troubles.map(escaped)),
        ...(comesOut ? [made('p', elsewhere, 'hint')] : []),
        resetButton(reset),
      )
      element.hidden = false
    },
    refuse: (words) => {
      const lead = 'Some numbers that were asked for can’t be used, and what is published stands instead:'
      element.prepend(made('p', lead), list(words.map(escaped)))
      if (element.hidden) element.append(resetButton(reset))
      element.hidden = false
    },
    hide: () => {
      element.hidden = true
      element.replaceChildren()
    },
  }
}

/** Both numbers are HTML that the core has made. */
function ownHtml({ label, own, published }: PageNumbers['own'][number]): string {
  return `<b>${escaped(label)}</b>: ${own} <span class="hint">instead of ${published}</span>`
}

export function resetButton(reset: () => void): HTMLButtonElement {
  const button = document.createElement('button')
  button.type = 'button'
  button.className = 'own-reset'
  button.textContent = 'Back to the published numbers'
  button.addEventListener('click', reset)
  return button
}

function made(name: string, text: string, className = ''): HTMLElement {
  const element = document.createElement(name)
  element.textContent = text
  if (className !== '') element.className = className
  return element
}

/** Nothing without items. */
function list(items: readonly string[]): Node {
  if (items.length === 0) return document.createDocumentFragment()
  const element = document.createElement('ul')
  element.innerHTML = items.map((item) => `<li>${item}</li>`).join('')
  return element
}

function escaped(text: string): string {
  return text.replace(/[&<]/g, (sign) => (sign === '&' ? '&amp;' : '&lt;'))
}
