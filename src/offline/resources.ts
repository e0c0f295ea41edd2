/** What a page says of the pattern on it. */
export interface PageVersion {
  readonly edition: string | null
  /** Differs where anything that is shown differs. */
  readonly version: string
}

/** The version in a page's `main`; null on a page of no pattern. */
export function versionIn(html: string): PageVersion | null {
  const main = /<main\b[^>]*>/.exec(html)?.[0] ?? ''
  const version = attribute(main, 'data-version')
  return version === null ? null : { version, edition: attribute(main, 'data-edition') }
}

/**
 * What a page needs to be shown: style sheets, scripts, pictures, its icon; and what a reader's own numbers and print-out are
 * made from, which has to be of the same edition. Addresses as they are written.
 */
export function resourcesOfPage(html: string): readonly string[] {
  const tags = html.match(/<(?:link|script|img|details|li)\b[^>]*>/g) ?? []
  return tags.flatMap((tag) => {
    if (tag.startsWith('<link')) return /rel="(?:stylesheet|icon)"/.test(tag) ? (attribute(tag, 'href') ?? []) : []
    if (tag.startsWith('<li')) return ['data-pattern', 'data-parts'].flatMap((name) => attribute(tag, name) ?? [])
    return attribute(tag, tag.startsWith('<details') ? 'data-recipe' : 'src') ?? []
  })
}

/** Links of a page into a folder that lead to print-outs or to pages. */
export function linksInto(folder: string, html: string): readonly string[] {
  const links = (html.match(/<a\b[^>]*>/g) ?? []).flatMap((tag) => attribute(tag, 'href') ?? [])
  return links.filter((link) => link.startsWith(folder) && link !== folder && /(?:\.pdf|\/)$/.test(link))
}

/** What a style sheet calls for on any page. Fonts of rarer letters are left out: they are kept where a page has used them. */
export function resourcesOfStyles(css: string): readonly string[] {
  const parts = css.split(/(@font-face\s*\{[^}]*\})/)
  return parts.filter((part) => !part.startsWith('@font-face') || hasLetters(part)).flatMap(addressesIn)
}

function addressesIn(css: string): readonly string[] {
  const addresses = [...css.matchAll(/url\(["']?([^"')]+)["']?\)/g)].flatMap(([, address]) => address ?? [])
  return addresses.filter((address) => !address.startsWith('data:'))
}

/** Whether a face is for the letters that every page is written with. */
function hasLetters(face: string): boolean {
  const ranges = /unicode-range:\s*([^;}]+)/.exec(face)?.[1]?.split(',') ?? ['U+0-FF']
  return ranges.some((range) => {
    const [, first = '', last = first] = /U\+([\dA-F?]+)(?:-([\dA-F]+))?/i.exec(range) ?? []
    const at = (code: string, filler: string): number => Number.parseInt(code.replaceAll('?', filler), 16)
    return at(first, '0') <= letter && letter <= at(last, 'F')
  })
}

const letter = 'a'.charCodeAt(0)

/** Scripts that a script cannot start without. Those that it only asks for later are kept when it has. */
export function resourcesOfScript(script: string): readonly string[] {
  return [...script.matchAll(/\b(?:from|import)\s*["'](\.{0,2}\/[^"']+\.js)["']/g)].flatMap(
    ([, address]) => address ?? [],
  )
}

function attribute(tag: string, name: string): string | null {
  const value = new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1]
  return value === undefined ? null : value.replaceAll('&amp;', '&').replaceAll('&#38;', '&').replaceAll('&quot;', '"')
}
