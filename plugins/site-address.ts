import { readFileSync } from 'node:fs'
import { parse } from 'yaml'

/** Where a site stands: `https://lowwater.example`, and the path on that host, `/` or `/patterns`. */
export interface SiteAddress {
  readonly site: string
  readonly base: string
}

/**
 * Where the studio's own words, `address:` in `content/studio.yaml`, say that the site stands. Null where they give no address on
 * the web: what needs one, such as feed and sitemap, is then left out.
 */
export function siteAddressIn(file: string): SiteAddress | null {
  const studio: unknown = parsed(file)
  if (typeof studio !== 'object' || studio === null || !('address' in studio)) return null
  const { address } = studio
  if (typeof address !== 'string' || !/^https?:\/\//.test(address) || !URL.canParse(address)) return null
  const { origin, pathname } = new URL(address)
  return { site: origin, base: pathname.replace(/\/+$/, '') || '/' }
}

/** What is wrong with the file itself is told where its contents are checked. */
function parsed(file: string): unknown {
  try {
    return parse(readFileSync(file, 'utf8'))
  } catch {
    return null
  }
}
