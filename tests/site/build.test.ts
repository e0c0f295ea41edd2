import { createHash } from 'node:crypto'
import { readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { build, copyProject, project } from './project-copy.ts'

/** Every file of a folder with its hash, by path. */
function hashes(folder: string): Record<string, string> {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((path) =>
    statSync(join(folder, path)).isFile(),
  )
  return Object.fromEntries(
    files.sort().map((path) => [
      path,
      createHash('sha256')
        .update(readFileSync(join(folder, path)))
        .digest('hex'),
    ]),
  )
}

describe('a build in another place, on another day, in another time zone and language', () => {
  let root: string
  let built: ReturnType<typeof build>
  beforeAll(() => {
    root = copyProject('site', ['content'])
    const later = `--import=${join(project, 'tests/another-day.mjs')}`
    const place = { TZ: 'Pacific/Kiritimati', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' }
    built = build(root, { ...place, NODE_OPTIONS: later })
  })
  afterAll(() => rmSync(root, { recursive: true, force: true }))

  it('gives the same bytes', () => {
    expect(built.status, built.stderr).toBe(0)
    const expected = hashes(join(project, 'site'))
    expect(Object.keys(expected).filter((path) => path.endsWith('.pdf')).length).toBeGreaterThan(4)
    expect(hashes(join(root, 'site'))).toEqual(expected)
  })

  it('has no proof in it', () => {
    expect(Object.keys(hashes(join(root, 'site'))).filter((path) => path.includes('proof'))).toEqual([])
  })

  it('prints a line for each pattern', () => {
    expect(built.stdout).toMatch(/^Pattern\s+Sizes\s+Rows worked\s+Unread\s+Findings\s+Pages\s+PDF files$/m)
    for (const slug of readdirSync(join(root, 'content/patterns'))) {
      const title = /^title: (.*)$/m.exec(readFileSync(join(root, 'content/patterns', slug, 'index.md'), 'utf8'))?.[1]
      expect(built.stdout).toMatch(new RegExp(`^${title}\\s+\\d+\\s+\\d+\\s+0\\s+(?:none|\\d+ notes?)\\s+1\\s+6$`, 'm'))
    }
  })

  it('stops at drafts with errors, names them all, and leaves the site built last', () => {
    const before = hashes(join(root, 'site'))
    const [first = '', second = ''] = readdirSync(join(root, 'content/patterns'))
    for (const [slug, slip] of [
      [first, 'sizs: [A]'],
      [second, 'title: A\nsizes: [S]\n---\n{{nothing}}\n---'],
    ] as const) {
      writeFileSync(join(root, 'content/patterns', slug, 'index.md'), `---\n${slip}\n---\n`)
    }
    const { status, stderr } = build(root)
    expect(status).toBe(1)
    expect(stderr).toContain('key-unknown')
    expect(stderr).toContain('name-unknown')
    expect(stderr).toContain('The site built last is still in place.')
    expect(hashes(join(root, 'site'))).toEqual(before)
    expect(readdirSync(root)).not.toContain('site.new')
  })
})
