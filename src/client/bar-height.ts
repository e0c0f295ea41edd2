import { showChosen } from './choices.ts'

/** What the style sheets guess is left where it is as near, in px: to put it right, every style of the page is worked out anew. */
const near = 2

/**
 * Tells the style sheets how much of the window the bar covers, which grows with its letters, its sizes and a reader's
 * place: what is led to must not lie under it. In a style sheet of its own, for the page allows no style of an element.
 */
export function startBarHeight(): void {
  const bar = document.querySelector('.bar')
  // Browsers of before 2023 may not have such sheets; there the guess of the style sheets stands.
  if (bar === null || !('adoptedStyleSheets' in document)) return
  const sheet = new CSSStyleSheet()
  new ResizeObserver(() => {
    const { height } = bar.getBoundingClientRect()
    const told = Number.parseFloat(getComputedStyle(document.documentElement).getPropertyValue('--bar'))
    if (!(Math.abs(height - told) <= near)) sheet.replaceSync(`html{--bar:${Math.ceil(height)}px!important}`)
    if (!document.adoptedStyleSheets.includes(sheet) && sheet.cssRules.length > 0)
      document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet]
    showChosen(bar)
  }).observe(bar)
}
