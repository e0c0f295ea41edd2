import type { PageNumbers } from '../../own/page.ts'

/** The parts of the page that have numbers, as published, and with others in their place. */
export interface Parts {
  readonly show: (page: PageNumbers) => void
  readonly showPublished: () => void
}

export function partsOfPage(): Parts {
  const published = [...document.querySelectorAll<HTMLElement>('[data-part]')].map((element) => ({
    element,
    nodes: [...element.childNodes],
  }))
  const spoken = new CSSStyleSheet()
  const elsewhere = document.adoptedStyleSheets
  return {
    show: (page) => {
      for (const { element, nodes } of published) {
        const html = page.parts[element.dataset.part ?? '']
        if (html !== undefined) element.replaceChildren(withPictures(html, nodes))
      }
      // The numbers of readings may have moved: this comes after the pattern's own sheet.
      spoken.replaceSync(page.spoken)
      document.adoptedStyleSheets = [...elsewhere, spoken]
    },
    showPublished: () => {
      for (const { element, nodes } of published) element.replaceChildren(...nodes)
      document.adoptedStyleSheets = elsewhere
    },
  }
}

/** Pictures stand in the same order, and the site has fitted those of the page to screens: they are taken over. */
function withPictures(html: string, published: readonly Node[]): DocumentFragment {
  const { content } = Object.assign(document.createElement('template'), { innerHTML: html })
  const fitted = published.flatMap((node) => (node instanceof Element ? [...node.querySelectorAll('img')] : []))
  for (const [index, image] of content.querySelectorAll('img').entries()) {
    const own = fitted[index]
    if (own !== undefined) image.replaceWith(own.cloneNode())
  }
  return content
}
