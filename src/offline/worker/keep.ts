import { patternBucket, seenBucket } from '../bucket.ts'
import type { KeepRequest, Reply, ShowRequest } from '../message.ts'
import { type PageVersion, versionIn } from '../resources.ts'
import { fill, fresh, gatherPage, gatherPattern } from './gather.ts'

/** As many files of pages that belong to no pattern are kept; the oldest go. */
const mostSeen = 150

/** Keeps a page that was opened. Of a pattern that is kept already, the newer edition is laid beside it and told of. */
export async function keep({ page, folder, loaded }: KeepRequest): Promise<Reply> {
  return folder === null ? keepSeen(address(page), loaded) : keepPattern(address(folder), folder, loaded)
}

/** The newer edition takes the place of the one that was kept. */
export async function show({ folder }: ShowRequest): Promise<Reply> {
  const next = patternBucket('next', folder)
  const waiting = await caches.open(next)
  const files = new Map<string, Response>()
  for (const request of await waiting.keys()) {
    const response = await waiting.match(request)
    if (response !== undefined) files.set(request.url, response)
  }
  if (!files.has(address(folder))) return { kind: 'failed' }
  await fill(patternBucket('kept', folder), files)
  await caches.delete(next)
  return { kind: 'kept' }
}

function address(path: string): string {
  return new URL(path, location.href).href
}

async function keepSeen(page: string, loaded: readonly string[]): Promise<Reply> {
  const files = await gatherPage(page, loaded)
  if (files === null) return { kind: 'failed' }
  const seen = await caches.open(seenBucket)
  for (const [each, response] of [...files].reverse()) await seen.put(each, response.clone())
  const all = await seen.keys()
  for (const request of all.slice(0, Math.max(0, all.length - mostSeen))) await seen.delete(request)
  return { kind: 'kept' }
}

async function keepPattern(page: string, folder: string, loaded: readonly string[]): Promise<Reply> {
  const own = await textIn(patternBucket('kept', folder), page)
  if (own === null) return fillWith(patternBucket('kept', folder), page, loaded)
  const text = await textOnSite(page)
  if (text === null) return { kind: 'kept' }
  const news = newsOf(versionIn(own), versionIn(text))
  if (news === null) {
    await caches.delete(patternBucket('next', folder))
    return text === own ? { kind: 'kept' } : fillWith(patternBucket('kept', folder), page, loaded)
  }
  const next = patternBucket('next', folder)
  if ((await textIn(next, page)) === text) return news
  const filled = await fillWith(next, page, loaded)
  return filled.kind === 'failed' ? filled : news
}

async function fillWith(bucket: string, page: string, loaded: readonly string[]): Promise<Reply> {
  const files = await gatherPattern(page, loaded)
  if (files === null) return { kind: 'failed' }
  await fill(bucket, files)
  return { kind: 'kept' }
}

/** Null without a connection, and where the pattern is no longer on the site. */
async function textOnSite(page: string): Promise<string | null> {
  const response = await fresh(page).catch(() => null)
  return response === null ? null : response.text()
}

async function textIn(bucket: string, page: string): Promise<string | null> {
  if (!(await caches.has(bucket))) return null
  const response = await (await caches.open(bucket)).match(page)
  return response === undefined ? null : response.text()
}

/** What to tell a reader whose page differs; null where the pattern is the same, and only what stands around it is not. */
function newsOf(own: PageVersion | null, newest: PageVersion | null): Reply | null {
  if (own === null || newest === null || own.version === newest.version) return null
  return { kind: 'news', edition: newest.edition, sameEdition: own.edition === newest.edition }
}
