const schemes = new Set(['http:', 'https:', 'mailto:'])

/** Only there to read relative addresses against, as a browser would; it never shows. */
const site = new URL('https://site.invalid/')

function read(address: string): URL | null {
  return URL.canParse(address, site) ? new URL(address, site) : null
}

/** Whether a link may go there: the web, mail, or a place on this site. Scripts and data may not. */
export function isLinkAddress(address: string): boolean {
  const url = read(address)
  return url !== null && schemes.has(url.protocol)
}

/** Whether a picture may come from there: only this site, for a page asks no other server for anything. */
export function isPictureAddress(address: string): boolean {
  return read(address)?.origin === site.origin
}
