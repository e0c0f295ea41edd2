/** An abbreviation shows what it stands for while it has the focus; Escape takes that away. */
export function startExplained(): void {
  document.addEventListener('keydown', ({ key }) => {
    const { activeElement } = document
    if (key === 'Escape' && activeElement instanceof HTMLElement && activeElement.matches('abbr, .explained'))
      activeElement.blur()
  })
}
