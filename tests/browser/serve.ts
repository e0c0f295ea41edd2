import { readFile } from 'node:fs/promises'
import { createServer, type Server } from 'node:http'
import { extname, join, normalize } from 'node:path'

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.jpg': 'image/jpeg',
  '.png': 'image/png',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.pdf': 'application/pdf',
  '.json': 'application/json',
  '.csv': 'text/csv; charset=utf-8',
}

export interface ServedSite {
  /** `http://127.0.0.1:40123`, without a slash at the end. */
  readonly origin: string
  readonly close: () => Promise<void>
}

/** Serves a folder as a plain web host would: `/a/` is `/a/index.html`, what is not there is `404.html`. */
export async function serveFolder(folder: string): Promise<ServedSite> {
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://127.0.0.1')
    const wanted = normalize(decodeURIComponent(pathname.endsWith('/') ? `${pathname}index.html` : pathname))
    const found = await readOrNull(join(folder, wanted))
    const body = found ?? (await readOrNull(join(folder, '404.html'))) ?? ''
    const type = found === null ? '.html' : extname(wanted)
    response.writeHead(found === null ? 404 : 200, { 'content-type': types[type] ?? 'application/octet-stream' })
    response.end(body)
  })
  return { origin: await listen(server), close: () => closed(server) }
}

async function readOrNull(path: string): Promise<Buffer | null> {
  try {
    return await readFile(path)
  } catch {
    return null
  }
}

function listen(server: Server): Promise<string> {
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      if (address === null || typeof address === 'string') reject(new Error('The server has no port.'))
      else resolve(`http://127.0.0.1:${address.port}`)
    })
  })
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve())
    server.closeAllConnections()
  })
}
