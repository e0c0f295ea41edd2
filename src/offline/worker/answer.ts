import { keptFolder, patternBucket, seenBucket } from '../bucket.ts'

/** What a reader has chosen stands behind the `?` of an address, and the page is the same. */
const anySearch = { ignoreSearch: true, ignoreVary: true }

/** Answers a page's request for a file of the site: from what is kept where the reader works from it, else from the site. */
export async function answer(request: Request, offlinePage: string): Promise<Response> {
  const kept = await fromPattern(request)
  if (kept !== undefined) return kept
  if (isUnchanging(request.url)) return (await caches.match(request.url)) ?? fromSite(request, offlinePage)
  return fromSite(request, offlinePage)
}

/** Files with a hash in their name. */
function isUnchanging(address: string): boolean {
  return address.includes('/_astro/')
}

/** A file of a pattern that is kept, whatever is on the site by now: editions never mix. */
async function fromPattern(request: Request): Promise<Response | undefined> {
  const { pathname } = new URL(request.url)
  const folders = (await caches.keys()).flatMap((name) => keptFolder(name) ?? [])
  const folder = folders.find((each) => pathname.startsWith(each))
  if (folder === undefined) return undefined
  return (await caches.open(patternBucket('kept', folder))).match(request, anySearch)
}

async function fromSite(request: Request, offlinePage: string): Promise<Response> {
  try {
    const response = await fetch(request)
    if (response.ok && isUnchanging(request.url)) await remember(request, response)
    return response
  } catch (error) {
    const instead = await withoutSite(request, offlinePage)
    if (instead === undefined) throw error
    return instead
  }
}

/** A part of a page that came later, such as one that a reader asked for, is kept as its page is. */
async function remember(request: Request, response: Response): Promise<void> {
  const copy = response.clone()
  const { pathname } = new URL(request.referrer === '' ? request.url : request.referrer)
  const folders = (await caches.keys()).flatMap((name) => keptFolder(name) ?? [])
  const folder = folders.find((each) => pathname.startsWith(each))
  const bucket = folder === undefined ? seenBucket : patternBucket('kept', folder)
  await (await caches.open(bucket)).put(request.url, copy)
}

async function withoutSite(request: Request, offlinePage: string): Promise<Response | undefined> {
  const seen = await caches.match(request, anySearch)
  if (seen !== undefined) return seen
  if (request.mode === 'navigate') return caches.match(offlinePage)
  return request.destination === 'image' ? sameInAnotherSize(request.url) : undefined
}

/** The same picture in another of its widths: they share the name up to the last mark. */
async function sameInAnotherSize(address: string): Promise<Response | undefined> {
  const stem = /^.*\/[^/]+\.[^/._]+_/.exec(address)?.[0]
  if (stem === undefined) return undefined
  for (const name of await caches.keys()) {
    const bucket = await caches.open(name)
    const other = (await bucket.keys()).find(({ url }) => url.startsWith(stem))
    if (other !== undefined) return bucket.match(other)
  }
  return undefined
}
