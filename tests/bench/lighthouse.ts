import { spawn } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import { extname, join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { patternPages, siteFolder } from '../browser/site.ts'

/**
 * Lighthouse's scores for the built site, on its mobile settings: `npm run lighthouse`, with pages to look at where not all
 * are wanted. It is fetched when it is asked for, and measures the machine too: let nothing else run beside it.
 */
const version = '12.2.3'
const runs = 3

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
}

/** As a web host does: compressed, and what has a hash in its name for good. */
const server = createServer(async ({ url = '/' }, response) => {
  const { pathname } = new URL(url, 'http://127.0.0.1')
  const file = pathname.endsWith('/') ? `${pathname}index.html` : pathname
  const body = await readFile(join(siteFolder, file)).catch(() => null)
  if (body === null) return response.writeHead(404).end()
  const type = types[extname(file)] ?? 'application/octet-stream'
  const packs = /text|json|svg/.test(type)
  response.writeHead(200, {
    'content-type': type,
    ...(packs ? { 'content-encoding': 'gzip' } : {}),
    ...(file.startsWith('/_astro/') ? { 'cache-control': 'public, max-age=31536000, immutable' } : {}),
  })
  return response.end(packs ? gzipSync(body) : body)
})

interface Report {
  readonly categories: Readonly<Record<string, { readonly title: string; readonly score: number }>>
  readonly audits: Readonly<Record<string, { readonly displayValue?: string }>>
}

async function audit(address: string): Promise<Report> {
  const flags = '--chrome-flags=--headless=new --no-sandbox --disable-gpu'
  const args = ['--yes', `lighthouse@${version}`, address, '--quiet', '--output=json', flags]
  const run = spawn('npx', args, {
    env: { CHROME_PATH: '/usr/bin/chromium', ...process.env },
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const pieces: Buffer[] = []
  for await (const piece of run.stdout) pieces.push(piece)
  return JSON.parse(Buffer.concat(pieces).toString())
}

const performanceOf = ({ categories }: Report): number => categories.performance?.score ?? 0

/** Of several, the one in the middle. */
async function middleOf(address: string): Promise<Report | undefined> {
  const reports: Report[] = []
  for (let run = 0; run < runs; run += 1) reports.push(await audit(address))
  return reports.toSorted((a, b) => performanceOf(a) - performanceOf(b))[Math.floor(runs / 2)]
}

server.listen(0, '127.0.0.1', async () => {
  const at = server.address()
  const origin = typeof at === 'object' ? `http://127.0.0.1:${at?.port}` : ''
  const asked = process.argv.slice(2)
  for (const path of asked.length > 0 ? asked : ['/', ...patternPages]) {
    const report = await middleOf(`${origin}${path}`)
    const scores = Object.values(report?.categories ?? {}).map(
      ({ title, score }) => `${title} ${Math.round(score * 100)}`,
    )
    const shown = ['first-contentful-paint', 'total-blocking-time', 'cumulative-layout-shift']
    const measures = shown.map((id) => `${id} ${report?.audits[id]?.displayValue}`)
    console.log(`${path}: ${[...scores, ...measures].join(', ')}`)
  }
  server.close()
})
