import { type ChildProcess, spawn } from 'node:child_process'
import { chmodSync, cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { launch } from '../browser/browser.ts'
import { copyProject, project } from './project-copy.ts'

const hat = 'content/patterns/bollard-hat'
const cowl = 'content/patterns/slack-tide-cowl'

let root: string
let server: ChildProcess
let origin: string
let browser: Browser
let page: Page
let sound: string

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
  for (const pattern of [hat, cowl]) cpSync(join(project, pattern), join(root, pattern), { recursive: true })
  sound = readFileSync(join(root, hat, 'index.md'), 'utf8')
  ;[origin, browser] = await Promise.all([started(), launch()])
  page = await browser.newPage()
}, 120_000)

afterAll(async () => {
  await browser.close()
  server.kill('SIGTERM')
  rmSync(root, { recursive: true, force: true })
})

function save(text: string): void {
  writeFileSync(join(root, hat, 'index.md'), text)
}

/** Opens a page again and again until it has some words: a save takes a moment to arrive. */
async function has(path: string, words: string): Promise<void> {
  await expect
    .poll(async () => (await (await fetch(origin + path)).text()).includes(words), { timeout: 20_000 })
    .toBe(true)
}

const faulty = () => sound.replace('(12 sc)', '(13 sc)')

describe('the preview', { timeout: 60_000 }, () => {
  it('opens the proof from the page of a pattern', async () => {
    await page.goto(`${origin}/patterns/bollard-hat/`)
    await page.getByText('Findings in this draft: 0').click()
    await page.getByText('The whole proof').click()
    await page.waitForURL('**/patterns/bollard-hat/proof/')
    expect(await page.locator('h1').textContent()).toBe('Proof of Bollard Hat')
    expect(await page.getByText('Nothing was found.').count()).toBe(1)
  })

  it('shows what is wrong in the proof as soon as it is saved, and that it is mended', async () => {
    await page.goto(`${origin}/patterns/bollard-hat/proof/`)
    save(faulty())
    await page.getByText('Rnd 2 states 13 sc, but its steps make 12.').waitFor({ timeout: 20_000 })
    save(sound)
    await page.getByText('Nothing was found.').waitFor({ timeout: 20_000 })
  })

  it('shows it on the page too, where the rest goes on, and opens the editor at the place', async () => {
    save(faulty())
    await has('/patterns/bollard-hat/', 'states 13 sc')
    await page.goto(`${origin}/patterns/bollard-hat/`)
    expect(await page.locator('article h1').textContent()).toBe('Bollard Hat')
    const line = faulty().slice(0, faulty().indexOf('(13 sc)')).split('\n').length
    const link = page.locator('.finding-place a')
    expect(await link.textContent()).toBe(`line ${line}`)
    await fetch(new URL((await link.getAttribute('href')) ?? '', origin))
    const opened = join(root, 'opened.txt')
    await expect
      .poll(() => existsSync(opened) && readFileSync(opened, 'utf8'), { timeout: 10_000 })
      .toContain(`${join(root, hat, 'index.md')}`)
    save(sound)
  })

  it('goes on where a draft can’t be read at all, and names it', async () => {
    save(sound.replace('sizes:', 'sizs:'))
    await has('/', 'bollard-hat</a> cannot be shown yet')
    await has('/patterns/bollard-hat/', 'The front matter has no key')
    await has('/patterns/bollard-hat/proof/', 'key-unknown')
    await has('/patterns/slack-tide-cowl/', '<h1>Slack Tide Cowl')
    save(sound)
    await has('/', 'Bollard Hat</a>')
  })

  it('goes on where a picture isn’t there, and shows it when it is', async () => {
    save(`${sound.replace('./cover.svg', './hat.svg')}\n![The brim, from below](./brim.svg)\n`)
    await has('/patterns/bollard-hat/', 'does not lie beside the draft')
    for (const path of ['/', '/patterns/slack-tide-cowl/', '/patterns/bollard-hat/proof/'])
      expect((await fetch(origin + path)).status, path).toBe(200)
    const cover = readFileSync(join(root, hat, 'cover.svg'))
    for (const name of ['hat.svg', 'brim.svg']) writeFileSync(join(root, hat, name), cover)
    await has('/patterns/bollard-hat/', 'Findings in this draft: 0')
    await has('/patterns/bollard-hat/', 'alt="The brim, from below"')
    save(sound)
  })

  it('goes on where a draft is taken away, and where one is begun', async () => {
    rmSync(join(root, cowl), { recursive: true })
    await expect
      .poll(async () => (await fetch(`${origin}/patterns/slack-tide-cowl/`)).status, { timeout: 20_000 })
      .toBe(404)
    expect((await fetch(`${origin}/patterns/bollard-hat/`)).status).toBe(200)
    const begun = join(root, 'content/patterns/harbour-mat')
    mkdirSync(begun)
    writeFileSync(join(begun, 'index.md'), '---\ntitle: Harbour Mat\nsizes: [S]\n---\n\n## Mat\n\nRow 1: Ch 5.\n')
    await has('/', 'Harbour Mat')
    await has('/patterns/harbour-mat/proof/', 'Proof of Harbour Mat')
  })
})
