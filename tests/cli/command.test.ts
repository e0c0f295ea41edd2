import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'

const project = resolve(import.meta.dirname, '../..')
const drafts = readdirSync(join(project, 'content/patterns')).map((slug) => `content/patterns/${slug}/index.md`)
const schema = JSON.parse(readFileSync(join(project, 'src/proof/proof.schema.json'), 'utf8'))
const valid = new Ajv2020({ allowUnionTypes: true }).compile(schema)

function sizewright(args: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['src/cli/main.ts', ...args], {
    cwd: project,
    input,
    encoding: 'utf8',
    maxBuffer: 1e8,
  })
  return { status, stdout, stderr }
}

function file(text: string | Uint8Array): string {
  const path = join(mkdtempSync(join(tmpdir(), 'draft-')), 'draft.md')
  writeFileSync(path, text)
  return path
}

const sound = '---\ntitle: Mat\nsizes: [S]\n---\n\n## Mat\n\nRow 1: Ch 5.\n'

describe('sizewright proof', () => {
  it('prints one document for one draft, as the schema says', () => {
    const { status, stdout } = sizewright(['proof', '--json', drafts[0] ?? ''])
    expect(status).toBe(0)
    expect(valid(JSON.parse(stdout)), JSON.stringify(valid.errors)).toBe(true)
  })

  it('prints an array for several, in the order given', () => {
    const { status, stdout } = sizewright(['proof', ...drafts, '--json'])
    expect(status).toBe(0)
    const proofs: { draft: string }[] = JSON.parse(stdout)
    expect(proofs.map((proof) => proof.draft)).toEqual(drafts)
    for (const proof of proofs) expect(valid(proof), JSON.stringify(valid.errors)).toBe(true)
  })

  it('reads standard input', () => {
    const { status, stdout } = sizewright(['proof', '-', '--json'], sound)
    expect(status).toBe(0)
    expect(JSON.parse(stdout)).toMatchObject({ draft: '-', sizes: ['S'], rows: [{ label: 'Row 1', line: 8 }] })
  })

  it('writes a page and a table for a checker, and ends with 1 where there are errors', () => {
    const wrong = sound.replace('Ch 5.', 'Ch 5, sc in 2nd ch from hook and in each ch across. (5 sc)')
    const page = sizewright(['proof', '-', '--html'], wrong)
    expect(page.status).toBe(1)
    expect(page.stdout).toMatch(/^<!doctype html>.*count-mismatch.*<\/html>\n$/s)
    const table = sizewright(['proof', '-', '--csv'], wrong)
    expect(table.status).toBe(1)
    expect(table.stdout.split('\r\n').slice(0, 2)).toEqual([
      'Piece,Row,Line,Side,Status,What,Kind,S',
      'Mat,Row 1,8,,worked,worked,total,4',
    ])
  })

  it('names errors with file, line, column and what to write, and ends with 1', () => {
    const path = file('---\ntitle: Mat\nsizs: [S]\n---\n')
    const { status, stdout } = sizewright(['proof', path])
    expect(status).toBe(1)
    expect(stdout).toContain(`${path}:3:1  error  key-unknown`)
    expect(stdout).toContain('Write `sizes` instead.')
  })

  it('does not let one bad draft hide the findings of another', () => {
    const [bad, good] = [file('no front matter'), file('---\ntitle: Mat\nsizes: [S]\nskil: easy\n---\n')]
    const { status, stdout } = sizewright(['proof', bad, good])
    expect(status).toBe(1)
    expect(stdout).toContain('front-matter-missing')
    expect(stdout).toContain('key-unknown')
  })

  it('explains itself when asked', () => {
    const { status, stdout } = sizewright(['proof', '--help'])
    expect(status).toBe(0)
    expect(stdout).toContain('sizewright proof DRAFT')
  })

  it.each([
    ['a file that does not exist', ['proof', 'no-such-draft.md'], 'does not exist'],
    ['a folder', ['proof', 'content'], 'is a folder'],
    ['no draft', ['proof'], 'Name a draft'],
    ['an unknown option', ['proof', '--jsn', 'x.md'], 'no option “--jsn”'],
    ['sizes without names', ['proof', 'x.md', '--sizes'], '--sizes and --terms need a value'],
    ['an empty size', ['proof', 'x.md', '--sizes', 'S,,L'], '--sizes is a list of names'],
    ['terms that there are not', ['proof', 'x.md', '--terms', 'au'], '--terms is us or uk'],
    ['standard input that can’t be watched', ['proof', '-', '--watch'], '--watch shows files'],
    ['two kinds of output', ['proof', 'x.md', '--json', '--html'], 'one of --json, --html and --csv at a time'],
    ['pages of several drafts', ['proof', 'x.md', 'y.md', '--html'], '--html is for one draft at a time'],
    ['tables of several drafts', ['proof', 'x.md', 'y.md', '--csv'], '--csv is for one draft at a time'],
    ['a page that is watched', ['proof', 'x.md', '--html', '--watch'], '--watch shows files'],
    ['a page of a draft that does not exist', ['proof', 'no-such-draft.md', '--html'], 'does not exist'],
    ['an unknown command', ['prof'], 'no command “prof”'],
  ])('ends with 2 for %s', (_, args, words) => {
    const { status, stdout, stderr } = sizewright(args)
    expect(status).toBe(2)
    expect(stderr).toContain(words)
    expect(stdout).toBe('')
  })

  it('ends with 2 for a file that is no text, and says what to do', () => {
    const { status, stdout } = sizewright(['proof', file(new Uint8Array([0xff, 0xfe, 0x41]))])
    expect(status).toBe(2)
    expect(stdout).toContain('UTF-8')
  })
})

describe('sizewright counts', () => {
  it('prints rows down, sizes across, with lines that end as RFC 4180 asks', () => {
    const { status, stdout } = sizewright(['counts', drafts[0] ?? ''])
    expect(status).toBe(0)
    expect(stdout.split('\r\n')[0]).toMatch(/^Piece,Row,Side,Status,/)
  })
})

describe('sizewright new', () => {
  it('writes a draft that is sound as it is, and never over another', () => {
    const folder = mkdtempSync(join(tmpdir(), 'studio-'))
    const run = (...args: readonly string[]) =>
      spawnSync(process.execPath, [join(project, 'src/cli/main.ts'), ...args], { cwd: folder, encoding: 'utf8' })
    expect(run('new', 'Harbour Mat').status).toBe(0)
    const proof = run('proof', 'content/patterns/harbour-mat/index.md', '--json')
    expect(proof.status).toBe(0)
    const { diagnostics, rows } = JSON.parse(proof.stdout)
    expect(diagnostics).toEqual([])
    expect(rows.every((row: { status: string }) => row.status === 'worked')).toBe(true)
    expect(run('new', 'Harbour Mat').status).toBe(2)
  })
})

describe('the package', () => {
  it('ships no test, draft or site', () => {
    const listed = execFileSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
      cwd: project,
      encoding: 'utf8',
    })
    const [{ files }] = JSON.parse(listed)
    const paths: string[] = files.map((entry: { path: string }) => entry.path)
    expect(paths).toContain('README.md')
    expect(paths.filter((path) => /^(?:tests|content|site)\//.test(path))).toEqual([])
  })
})

describe('what has been checked', () => {
  it('names rows not read with the words that stopped the reader, and words not known', () => {
    const path = file(
      '---\ntitle: Mat\nsizes: [S]\n---\n\n## Mat\n\nCh 5.\n\nRow 1: Sc in 2nd ch from hook, wibble 3.\n\nRow 2: Sc across.\n',
    )
    const { stdout } = sizewright(['proof', path])
    expect(stdout).toContain('Checked: 1 of 3 rows.')
    expect(stdout).toContain('not read: Row 1 of Mat (line 10). The reader stopped at “wibble 3”.')
    expect(stdout).toContain('not worked, because of a row before: 1 row')
    expect(stdout).toContain('words not known: wibble')
  })

  it('says nothing of it where all has been worked', () => {
    expect(sizewright(['proof', '-'], sound).stdout).not.toContain('Checked:')
  })
})

describe('sizewright work', () => {
  const cowl = 'content/patterns/slack-tide-cowl/index.md'

  it('shows a row for one size, place by place', () => {
    const { status, stdout } = sizewright(['work', cowl, 'Rnd 2', '--size', 'adult s'])
    expect(status).toBe(0)
    expect(stdout).toContain('Rnd 2 of Cowl, Adult S, on 72 places: 72 sc.')
    expect(stdout).toContain('5 dc: shell')
    expect(stdout).toContain('11 times more, up to 72')
  })

  it('shows every size where none is named', () => {
    const { stdout } = sizewright(['work', cowl, 'round 2'])
    expect(stdout.match(/^Rnd 2 of Cowl, /gm)).toHaveLength(3)
  })

  it.each([
    [[cowl, 'Rnd 99'], 'There is no row “Rnd 99”; there are Foundation, Rnd 1'],
    [[cowl, 'Rnd 2', '--size', 'Giant'], 'There is no size “Giant”; there are Child, '],
    [[cowl], 'Name a draft and a row'],
    [['nowhere.md', 'Rnd 2'], 'does not exist'],
    [[cowl, 'Rnd 2', '--colour', 'red'], 'colour'],
  ])('refuses %j', (args, message) => {
    const { status, stderr } = sizewright(['work', ...args])
    expect(status).toBe(2)
    expect(stderr).toContain(message)
  })

  it('says why a row was not worked, and ends with 1', () => {
    const path = file(
      '---\ntitle: Mat\nsizes: [S]\n---\n\n## Mat\n\nCh 5.\n\nRow 1: Sc in 2nd ch from hook, wibble 3.\n',
    )
    const { status, stdout } = sizewright(['work', path, 'Row 1'])
    expect(status).toBe(1)
    expect(stdout).toContain('Row 1 of Mat, S: not worked.')
  })
})
