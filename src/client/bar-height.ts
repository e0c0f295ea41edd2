import { showChosen } from './choices.ts'

/**
 * Tells the style sheets how much of the window the bar covers, which grows with its letters, its sizes and a reader's
 * place: what is led to must not lie under it. In a style sheet of its own, for the page allows no style of an element.
 */
export function startBarHeight(): void {
  const bar = document.querySelector('.bar')
  if (bar === null) return
  const sheet = new CSSStyleSheet()
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet]
  new ResizeObserver(() => {
    const { height } = bar.getBoundingClientRect()
    sheet.replaceSync(`html{--bar:${Math.ceil(height)}px!important;--bar-doubt:0px!important}`)
    showChosen(bar)
  }).observe(bar)
}
