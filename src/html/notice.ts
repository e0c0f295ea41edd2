/**
 * Puts the place for a notice about a reader's rows above the first of them, for the script to show. It is there from the
 * start because a browser works out a page's views anew for whatever is put in later.
 */
export function withNotice(html: string): string {
  return html.replace('<ol class="rows"', (list) => `<p class="place-notice hint" hidden>${chooseFirst}</p>${list}`)
}

const chooseFirst = 'Choose your size to tick off rows as you go.'
