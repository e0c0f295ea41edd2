import { dev } from 'astro'

/** `sizewright preview`: the site on this machine, refreshed at every save. */
export async function preview(): Promise<0> {
  const server = await dev({ root: process.cwd() })
  await new Promise((resolve) => server.watcher.once('close', resolve))
  return 0
}
