import { keptFolder } from '../offline/bucket.ts'

/** Lists the patterns that are kept on this device, on the page that stands for one that is not. */
async function listKept(): Promise<void> {
  const list = document.querySelector('#kept')
  if (list === null || !('caches' in globalThis)) return
  const folders = (await caches.keys()).flatMap((name) => keptFolder(name) ?? [])
  for (const folder of folders) {
    const page = await caches.match(folder)
    const title = /<h1[^>]*>(.*?)<\/h1>/s.exec((await page?.text()) ?? '')?.[1]
    if (title !== undefined) list.append(entry(folder, title))
  }
  document.querySelector('#kept-title')?.toggleAttribute('hidden', list.children.length === 0)
}

function entry(address: string, title: string): HTMLLIElement {
  const link = document.createElement('a')
  link.href = address
  // The title as the page has it, its entities read and nothing else.
  link.textContent = new DOMParser().parseFromString(title, 'text/html').body.textContent
  const item = document.createElement('li')
  item.append(link)
  return item
}

await listKept()
