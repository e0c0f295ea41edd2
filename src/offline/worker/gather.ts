import { linksInto, resourcesOfPage, resourcesOfScript, resourcesOfStyles } from '../resources.ts'

/** Files by their whole addresses, ready to be put into a bucket. */
export type Gathered = ReadonlyMap<string, Response>

/** The newest file from the site; null where there is none. Rejects without a connection. */
export async function fresh(address: string): Promise<Response | null> {
  const response = await fetch(address, { cache: 'no-cache' })
  // What was led elsewhere may not stand for the page that was asked for.
  return response.ok && !response.redirected ? response : null
}

/** A page with all that it needs to be shown; null where the site has no such page. */
export async function gatherPage(address: string, loaded: readonly string[]): Promise<Gathered | null> {
  const page = await fresh(address)
  if (page === null) return null
  const html = await page.clone().text()
  const found = new Map([[address, page]])
  await gatherResources(
    [...resourcesOfPage(html), ...loaded].map((resource) => new URL(resource, address).href),
    found,
  )
  return found
}

/** A pattern's page, the pages below it and its print-outs. */
export async function gatherPattern(folder: string, loaded: readonly string[]): Promise<Gathered | null> {
  const found = new Map((await gatherPage(folder, loaded)) ?? [])
  const page = found.get(folder)
  if (page === undefined) return null
  const { pathname } = new URL(folder)
  for (const link of linksInto(pathname, await page.clone().text())) {
    const address = new URL(link, folder).href
    const more = address.endsWith('/') ? await gatherPage(address, []) : await gatherFile(address)
    for (const [each, response] of more ?? []) found.set(each, response)
  }
  return found
}

async function gatherFile(address: string): Promise<Gathered | null> {
  const file = await fresh(address)
  return file === null ? null : new Map([[address, file]])
}

/** Adds resources and what they need in turn. What is missing on the site is missing here too. */
async function gatherResources(wanted: readonly string[], found: Map<string, Response>): Promise<void> {
  const next: string[] = []
  for (const address of new Set(wanted)) {
    const response = found.has(address) ? null : await resource(address)
    if (response === null) continue
    found.set(address, response)
    next.push(...(await needsOf(address, response)))
  }
  if (next.length > 0) await gatherResources(next, found)
}

/** Files with a hash in their name never change, so any copy will do. */
async function resource(address: string): Promise<Response | null> {
  const copy = address.includes('/_astro/') ? await caches.match(address) : undefined
  return copy ?? fresh(address)
}

async function needsOf(address: string, response: Response): Promise<readonly string[]> {
  const type = response.headers.get('content-type') ?? ''
  const read = type.includes('css') ? resourcesOfStyles : type.includes('javascript') ? resourcesOfScript : null
  if (read === null) return []
  return read(await response.clone().text()).map((need) => new URL(need, address).href)
}

/** Puts files into a bucket in place of what was there; the page, with which all began, comes last, so that where it is, all is. */
export async function fill(bucket: string, files: Gathered): Promise<void> {
  const kept = await caches.open(bucket)
  for (const [address, response] of [...files].reverse()) await kept.put(address, response.clone())
  for (const request of await kept.keys()) if (!files.has(request.url)) await kept.delete(request)
}
