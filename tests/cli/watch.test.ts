import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'

const project = resolve(import.meta.dirname, '../..')

const draft = (count: number): string =>
  `---\ntitle: Mat\nsizes: [S]\n---\n\n## Mat\n\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across. (${count} sc)\n`

/** A command at work, and what it has said so far. */
class Watching {
  readonly process: ChildProcess
  said = ''
  private readonly told: (() => void)[] = []

  constructor(path: string) {
    this.process = spawn(process.execPath, ['src/cli/main.ts', 'proof', '--watch', path], { cwd: project })
    for (const stream of [this.process.stdout, this.process.stderr])
      stream?.on('data', (chunk: Buffer) => {
        this.said += chunk.toString()
        for (const each of this.told) each()
      })
  }

  /** Waits until it says some words, and forgets what it said up to there. */
  async hears(words: string): Promise<void> {
    await new Promise<void>((done) => {
      const look = (): void => {
        if (this.said.includes(words)) done()
      }
      this.told.push(look)
      look()
    })
    this.said = this.said.slice(this.said.indexOf(words) + words.length)
  }

  async ends(): Promise<number | null> {
    const ended = new Promise<number | null>((done) => this.process.once('exit', done))
    this.process.kill('SIGINT')
    return ended
  }
}

let watching: Watching | null = null
afterEach(() => watching?.process.kill('SIGKILL'))

describe('proof --watch', () => {
  it('proofs again when a draft is saved, half written, replaced, deleted and put back', {
    timeout: 60_000,
  }, async () => {
    const folder = mkdtempSync(join(tmpdir(), 'watch-'))
    const path = join(folder, 'draft.md')
    writeFileSync(path, draft(10))
    watching = new Watching(path)
    await watching.hears('0 errors')
    // The watcher looks at the folder once before it hears of changes.
    await new Promise((done) => setTimeout(done, 1000))
    writeFileSync(path, draft(12))
    await watching.hears('count-mismatch')
    await watching.hears('1 error,')
    writeFileSync(path, '---\ntitle: Mat\nsiz')
    await watching.hears('front-matter-unclosed')
    writeFileSync(`${path}~`, draft(10))
    renameSync(`${path}~`, path)
    await watching.hears('0 errors')
    rmSync(path)
    await watching.hears('does not exist')
    writeFileSync(path, draft(11))
    await watching.hears('count-mismatch')
    expect(await watching.ends()).toBe(0)
  })
})
