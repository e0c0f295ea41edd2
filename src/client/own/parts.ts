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
  const others = (): CSSStyleSheet[] => document.adoptedStyleSheets.filter((sheet) => sheet !== spoken)
  let shown: PageNumbers | null = null
  return {
    show: (page) => {
      // What is there already keeps what was put into it: boxes to tick, the focus.
      if (page === shown) return
      shown = page
      for (const { element, nodes } of published) {
        const html = page.parts[element.dataset.part ?? '']
        if (html !== undefined) element.replaceChildren(withPictures(html, nodes))
      }
      // The numbers of readings may have moved: this comes after the pattern's own sheet.
      spoken.replaceSync(page.spoken)
      document.adoptedStyleSheets = [...others(), spoken]
    },
    showPublished: () => {
      if (shown === null) return
      shown = null
      for (const { element, nodes } of published) element.replaceChildren(...nodes)
      document.adoptedStyleSheets = others()
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
