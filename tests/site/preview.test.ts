import { type ChildProcess, spawn } from 'node:child_process'
import { chmodSync, cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { launch } from '../browser/browser.ts'
import { copyProject, project } from './project-copy.ts'

const mat = 'content/patterns/harbour-mat'
const cowl = 'content/patterns/slack-tide-cowl'

const picture = '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="30"><path d="M0 0h40v30z"/></svg>'
const sound = `---
title: Harbour Mat
sizes: [Small, Large]
cover: {src: ./cover.svg, alt: "Drawing: a mat"}
---

## Mat

Foundation: Ch 13 (17).

Row 1: Sc in 2nd ch from hook and in each ch across, turn. (12 (16) sc)

Rows 2–10: Ch 1, sc in each st across, turn. (12 (16) sc)
`
const faulty = sound.replace('turn. (12 (16) sc)', 'turn. (12 (15) sc)')

let root: string
let server: ChildProcess
let origin: string
let browser: Browser
let page: Page

/** Starts the preview as a person would, and waits until it says where it is. */
function started(): Promise<string> {
  const { PATH, HOME } = process.env
  // The "editor" writes down what it is asked to open.
  const editor = join(root, 'editor.sh')
  writeFileSync(editor, `#!/bin/sh\necho "$@" > ${join(root, 'opened.txt')}\n`)
  chmodSync(editor, 0o755)
  server = spawn(process.execPath, ['src/cli/main.ts', 'preview'], {
    cwd: root,
    env: { PATH, HOME, LAUNCH_EDITOR: editor, ASTRO_TELEMETRY_DISABLED: '1' },
  })
  return new Promise((resolve, reject) => {
    let said = ''
    server.stdout?.on('data', (chunk: Buffer) => {
      said += chunk.toString()
      const at = /http:\/\/localhost:\d+/.exec(said)?.[0]
      if (at !== undefined && said.includes('watching for file changes')) resolve(at)
    })
    server.once('exit', () => reject(new Error(said)))
  })
}

beforeAll(async () => {
  root = copyProject('preview', ['content/studio.yaml'])
  cpSync(join(project, cowl), join(root, cowl), { recursive: true })
  mkdirSync(join(root, mat))
  writeFileSync(join(root, mat, 'cover.svg'), picture)
  save(sound)
  ;[origin, browser] = await Promise.all([started(), launch()])
  page = await browser.newPage()
}, 120_000)

afterAll(async () => {
  await browser.close()
  server.kill('SIGTERM')
  rmSync(root, { recursive: true, force: true })
})

function save(text: string): void {
  writeFileSync(join(root, mat, 'index.md'), text)
}

/** Opens a page again and again until it has some words: a save takes a moment to arrive. */
async function has(path: string, words: string): Promise<void> {
  await expect
    .poll(async () => (await (await fetch(origin + path)).text()).includes(words), { timeout: 60_000 })
    .toBe(true)
}

describe('the preview', { timeout: 180_000 }, () => {
  it('opens the proof from the page of a pattern', async () => {
    await page.goto(`${origin}/patterns/harbour-mat/`)
    await page.getByText('Findings in this draft: 0').click()
    await page.getByText('The whole proof').click()
    await page.waitForURL('**/patterns/harbour-mat/proof/')
    expect(await page.locator('h1').textContent()).toBe('Proof of Harbour Mat')
    expect(await page.getByText('Nothing was found.').count()).toBe(1)
  })

  it('keeps nothing on the device, so that what is seen is what was saved', async () => {
    await page.goto(`${origin}/patterns/bollard-hat/`, { waitUntil: 'networkidle' })
    expect(await page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length)).toBe(0)
    expect(await page.evaluate(() => caches.keys())).toEqual([])
  })

  it('shows what is wrong in the proof as soon as it is saved, and that it is mended', async () => {
    await page.goto(`${origin}/patterns/harbour-mat/proof/`)
    save(faulty)
    await page.getByText('Row 1 states 15 sc for Large, but its steps make 16.').waitFor({ timeout: 60_000 })
    save(sound)
    await page.getByText('Nothing was found.').waitFor({ timeout: 60_000 })
  })

  it('shows it on the page too, where the rest goes on, and opens the editor at the place', async () => {
    save(faulty)
    await has('/patterns/harbour-mat/', 'states 15 sc')
    // The page reloads itself after a save, which may break off a first visit.
    const title = async () => {
      await page.goto(`${origin}/patterns/harbour-mat/`, { waitUntil: 'commit', timeout: 5_000 })
      return page.locator('article h1').textContent({ timeout: 5_000 })
    }
    await expect.poll(() => title().catch(() => null), { timeout: 60_000 }).toBe('Harbour Mat')
    const line = faulty.slice(0, faulty.indexOf('(12 (15) sc)')).split('\n').length
    const link = page.locator('.finding-place a')
    expect(await link.textContent()).toBe(`line ${line}`)
    await fetch(new URL((await link.getAttribute('href')) ?? '', origin))
    const opened = join(root, 'opened.txt')
    await expect
      .poll(() => existsSync(opened) && readFileSync(opened, 'utf8'), { timeout: 30_000 })
      .toContain(`${join(root, mat, 'index.md')}`)
    save(sound)
  })

  it('goes on where a draft can’t be read at all, and names it', async () => {
    save(sound.replace('sizes:', 'sizs:'))
    await has('/', 'harbour-mat</a> cannot be shown yet')
    await has('/patterns/harbour-mat/', 'The front matter has no key')
    await has('/patterns/harbour-mat/proof/', 'key-unknown')
    await has('/patterns/slack-tide-cowl/', '<h1>Slack Tide Cowl')
    save(sound)
    await has('/', 'Harbour Mat</a>')
  })

  it('goes on where a picture isn’t there, and shows it when it is', async () => {
    save(`${sound.replace('./cover.svg', './mat.svg')}\n![The brim, from below](./brim.svg)\n`)
    await has('/patterns/harbour-mat/', 'does not lie beside the draft')
    for (const path of ['/', '/patterns/slack-tide-cowl/', '/patterns/harbour-mat/proof/'])
      expect((await fetch(origin + path)).status, path).toBe(200)
    for (const name of ['mat.svg', 'brim.svg']) writeFileSync(join(root, mat, name), picture)
    await has('/patterns/harbour-mat/', 'Findings in this draft: 0')
    await has('/patterns/harbour-mat/', 'alt="The brim, from below"')
    save(sound)
  })

  it('goes on where a draft is taken away, and where one is begun', async () => {
    rmSync(join(root, cowl), { recursive: true })
    await expect
      .poll(async () => (await fetch(`${origin}/patterns/slack-tide-cowl/`)).status, { timeout: 60_000 })
      .toBe(404)
    expect((await fetch(`${origin}/patterns/harbour-mat/`)).status).toBe(200)
    const begun = join(root, 'content/patterns/ferry-mat')
    mkdirSync(begun)
    writeFileSync(join(begun, 'index.md'), '---\ntitle: Ferry Mat\nsizes: [S]\n---\n\n## Mat\n\nRow 1: Ch 5.\n')
    await has('/', 'Ferry Mat')
    await has('/patterns/ferry-mat/proof/', 'Proof of Ferry Mat')
  })
})
