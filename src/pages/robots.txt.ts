import type { APIRoute } from 'astro'
import { wholeAddress } from '../layouts/address.ts'

/** Everything may be read and found; where the site knows its own address, it says where the list of pages is. */
export const GET: APIRoute = () => {
  const sitemap = wholeAddress('sitemap.xml')
  const lines = ['User-agent: *', 'Disallow:', ...(sitemap === null ? [] : ['', `Sitemap: ${sitemap}`])]
  return new Response(`${lines.join('\n')}\n`, { headers: { 'Content-Type': 'text/plain; charset=utf-8' } })
}
